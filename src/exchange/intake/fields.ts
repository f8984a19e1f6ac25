import { plainWords } from './plain-words.ts';

/** What a column of a keeper's table may hold. One table may use any of them, some several times (one winter each). */
export type Field =
  | 'queen'
  | 'dam'
  | 'mates'
  | 'colony'
  | 'yard'
  | 'born'
  | 'season'
  | 'date'
  | 'mark'
  | 'origin'
  | 'background'
  | 'winter'
  | 'status'
  | 'ended'
  | 'gentle'
  | 'calm'
  | 'swarm-tendency'
  | 'frames-of-bees'
  | 'frames-of-brood'
  | 'frames-of-stores'
  | 'brood-pattern'
  | 'mites'
  | 'honey'
  | 'note'
  | 'ignore';

export interface FieldFacts {
  /** Words for the keeper who maps the columns. */
  readonly title: string;
  readonly hint: string;
  /** Words that stand over such columns, in plain lower-case letters; several languages, as tables come. */
  readonly synonyms: readonly string[];
}

/** Words between commas, as `plainWords` leaves them. Those of other languages are from memory. */
function words(text: string): readonly string[] {
  return text.split(',').map(plainWords);
}

export const FIELDS: Readonly<Record<Field, FieldFacts>> = {
  queen: {
    title: 'Queen',
    hint: 'Her name or number. A year or "daughter of" may stand with it.',
    synonyms: words(`
      queen, queen name, queen id, queen no, name, konigin, koenigin, konigin nr, reine, reina,
      regina, koningin, dronning, drottning, matka, matička, weisel, emo, emä, emon nimi,
      jméno, imię, матка, имя, ім'я`),
  },
  dam: {
    title: 'Dam',
    hint: 'Her mother: a name, "daughter of Birch", "F1 of Birch", "Birch x unknown".',
    synonyms: words(`
      dam, mother, mother queen, queen mother, mum, mother of queen, daughter of, parent,
      parent queen, mutter, muttervolk, konigin mutter, abstammung, tochter von, mere, madre,
      moeder, mor, descent, pedigree, lineage, line, from queen, raised from, grafted from,
      bred from, matka matky, matka po, dcera od, córka, dotter till, datter av, mor till, emän emä,
      od matky, мать, мати`),
  },
  mates: {
    title: 'Drones',
    hint: 'Where or with whom she mated. Kept as a remark.',
    synonyms: words(`
      mating, mated, drones, drone, drone line, father, father line, sire, vater, belegstelle,
      anpaarung, mating yard, mating station`),
  },
  colony: {
    title: 'Box',
    hint: 'The label on the box or hive.',
    synonyms: words(`
      hive, hive no, hive number, hive name, hive id, colony, colony no, colony id, box, box no,
      stand, volk, volk nr, stock, beute, stock nr, ruche, colonie, colmena, arnia, kast,
      volknummer, stade, kupa, nuc, úl, úl č, číslo úlu, včelstvo, ul, nr ula, rodzina, pień, bikupa,
      kube, pesä, pesän nro, вулик, улей, семья, сім'я`),
  },
  yard: {
    title: 'Yard',
    hint: 'Where the box stands.',
    synonyms: words(`
      yard, apiary, location, site, place, bee yard, standort, bienenstand, rucher, apiario,
      colmenar, bijenstand, bigard, stanoviště, stanovisko, včelnice, pasieka, pasieczysko, bigård, tarha,
      mehiläistarha, пасіка, пасека`),
  },
  born: {
    title: 'Her year',
    hint: 'When she emerged or was made: a year, a month or a day.',
    synonyms: words(`
      year, born, birth, birth year, hatched, emerged, year of birth, queen year, raised,
      age of queen, made, geburtsjahr, jahr, jahrgang, geschlupft, annee, ano, anno, jaar, ar,
      queen born, date born, introduced, rok, rok narození, ročník, rok matki, rocznik, född, født, årgang,
      fødselsår, vuosi, syntymävuosi, geb, geboren, рік, год`),
  },
  season: {
    title: 'Season',
    hint: 'The year that the row tells of, where a queen has a row for each.',
    synonyms: words(`
      season, bee season, bee year, saison, bienenjahr, temporada, stagione, seizoen, sezon, sezóna, säsong, sesong,
      kausi, kesä, сезон`),
  },
  date: {
    title: 'Date',
    hint: 'The day of the records in this row.',
    synonyms: words(`
      date, day, inspected, inspection, inspection date, visit, checked, datum, durchsicht, jour,
      fecha, data, dato, when, prohlídka, prehliadka, przegląd, besiktning, tilsyn, päivä, pvm, дата`),
  },
  mark: {
    title: 'Mark',
    hint: 'Colour and number of the mark.',
    synonyms: words(`
      mark, marked, marking, colour, color, dot, farbe, zeichen, gezeichnet, opalith, marque,
      couleur, marca, merk, kleur, markering, značka, barva, farba, znak, opalit, kolor, färg, farge, märkning,
      merkki, väri, мітка, метка`),
  },
  origin: {
    title: 'From',
    hint: 'From whom she came.',
    synonyms: words(`
      from, origin, source, breeder, supplier, bought from, herkunft, zuchter, origine, origen,
      herkomst, got from, původ, pôvod, pochodzenie, hodowca, ursprung, opprinnelse, alkuperä, походження`),
  },
  background: {
    title: 'Population',
    hint: 'The stock she comes out of, such as local bees.',
    synonyms: words(`
      stock type, race, strain, breed, population, subspecies, rasse, herkunftsrasse, type, raza,
      razza, ras`),
  },
  winter: {
    title: 'Winter',
    hint: 'Came through alive, or lost. The year may stand over the column.',
    synonyms: words(`
      winter, wintered, overwintered, overwintering, survived, survived winter, survival,
      alive in spring, spring alive, winter result, uberwintert, uberwinterung, auswinterung,
      hivernage, invernada, overwintering ok, overwinterd, alive after winter, zimování, přezimování,
      zimovanie, zimowla, przezimowała, övervintring, övervintrat, overvintring, talvehtiminen, зимівля,
      зимовка`),
  },
  status: {
    title: 'What became of her',
    hint: 'Alive, dead, sold, given away, superseded.',
    synonyms: words(`
      status, state, alive, fate, outcome, result, what happened, zustand, verbleib, estado, etat,
      stato, dead or alive, stav, stan, osud, tila, стан, состояние`),
  },
  ended: {
    title: 'Lost on',
    hint: 'The day of the loss or the handing over.',
    synonyms: words(`
      ended, died, death, lost, lost on, date lost, date died, end, end date, verlust, gestorben,
      verlust am, abgang, replaced, died on, úhyn, konec, strata, död, menetetty, загибель`),
  },
  gentle: {
    title: 'Gentle',
    hint: 'Score from 1 to 4, 4 the best.',
    synonyms: words(`
      gentle, gentleness, temper, temperament, docility, defensiveness, sanftmut, sanft, douceur,
      mansedumbre, docilita, zachtaardigheid, behaviour, behavior, mírnost, miernosť, łagodność, temperament, humör, gemytt, sävyisyys,
      лагідність`),
  },
  calm: {
    title: 'Calm on the comb',
    hint: 'Score from 1 to 4, 4 the best.',
    synonyms: words(`
      calm, calmness, calm on comb, calm on the comb, runny, comb behaviour, wabensitz, ruhe,
      tenue, tenue de cadre, raamvastheid, sezení na plástu, trzymanie plastra, ro på ram, spokój`),
  },
  'swarm-tendency': {
    title: 'Swarm tendency',
    hint: 'Score from 1 (swarmed) to 4 (no cells).',
    synonyms: words(`
      swarm, swarming, swarm tendency, swarminess, schwarmtrieb, schwarmneigung, schwarm,
      essaimage, enjambrazon, zwermdrift, rojivost, rojliwość, svärmlust, svermelyst, parveilu`),
  },
  'frames-of-bees': {
    title: 'Frames of bees',
    hint: 'Strength, in frames covered with bees.',
    synonyms: words(`
      frames, frames of bees, bees, strength, seams, seams of bees, fob, waben, besetzte waben,
      volksstarke, starke, cadres, cuadros, spring frames, rámky, rámků, plásty, síla, sila, ramki, siła, ramar,
      rammer, kehät, рамки, сила`),
  },
  'frames-of-brood': {
    title: 'Frames of brood',
    hint: 'Frames with brood.',
    synonyms: words(
      'brood, brood frames, frames of brood, brut, brutwaben, couvain, cria, broed, plod, czerw, yngel, sikiöt',
    ),
  },
  'frames-of-stores': {
    title: 'Frames of stores',
    hint: 'Frames of stores.',
    synonyms: words(
      'stores, food, feed, frames of stores, futter, futterwaben, provisions, reservas, voer, zásoby, zapasy, foder, fôr, ruoka',
    ),
  },
  'brood-pattern': {
    title: 'Brood pattern',
    hint: 'Percent of cells filled in a full patch.',
    synonyms: words('brood pattern, pattern, solid brood, brutbild, brutnest'),
  },
  mites: {
    title: 'Mites',
    hint: 'Mites and bees of a wash, as 6/300, or mites and days of a drop.',
    synonyms: words(`
      mites, mite, mite count, mite wash, wash, alcohol wash, varroa, varroa count, sugar shake,
      sugar roll, mite drop, natural drop, infestation, milben, milbenfall, varroen, auswaschung,
      puderzucker, acaros, comptage varroa, mijten, mites per 300, spad, spad kleštíka, kleštík, roztoči, osyp, warroza, kvalster,
      nedfall, midd, punkki, кліщ, клещ`),
  },
  honey: {
    title: 'Honey',
    hint: 'Honey taken, in kilograms.',
    synonyms: words(`
      honey, harvest, yield, honey kg, kg, honig, ertrag, honigertrag, miel, recolte, miele,
      honing, crop, honey lbs, med, miód, honung, honning, hunaja, мед`),
  },
  note: {
    title: 'Note',
    hint: 'Kept as a note.',
    synonyms: words(`
      note, notes, remark, remarks, comment, comments, bemerkung, bemerkungen, notiz, notizen,
      remarques, notas, opmerkingen, observations, other, misc, poznámka, poznámky, uwagi, anteckning,
      anteckningar, anmärkning, merknad, huomautus, huomiot, примітка, примечание`),
  },
  ignore: { title: 'Leave out', hint: 'Not brought in.', synonyms: words('row, no, nr, index, id') },
};

export const FIELD_NAMES = Object.keys(FIELDS) as readonly Field[];
