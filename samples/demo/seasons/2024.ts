import { above, noQueen, oldQueen, part, raises, type Telling } from '../telling/index.ts';

/** A hard winter, new labels, a queen for another breeder, and one mating that is known to the drone. */
export function season2024(tell: Telling): void {
  spring(tell);
  lateMay(tell);
  june(tell);
  confirmations(tell);
  slateIsGivenAway(tell);
  highSummer(tell);
  towardsWinter(tell);
}

function spring({ on, winterWalk, relabel, springRound, drones, wash, note, markAndName }: Telling): void {
  on('2024-04-06');
  winterWalk('Sallow Bank', {
    'Nuc 6': 'starved',
    'Nuc 11': 'winter',
    'Nuc 9': 'mites',
    Eaves: 'damp-or-cold',
  });
  note('Thirty below in January and a wet March. The old lady came through on five frames.');
  on('2024-04-07');
  winterWalk('High Fallow', { 'Nuc 1': 'queenless', 'Fallow 9': 'winter' });
  on('2024-04-20');
  relabel({
    Hazel: 'S1',
    'Nuc 7': 'S2',
    Sorrel: 'S3',
    'Nuc 4': 'S4',
    Linden: 'S5',
    'Nuc 10': 'S6',
    'Eaves east': 'S7',
  });
  note(
    'New labels: a letter for the yard and a number for the box. A queen keeps her name, a box its number.',
  );
  springRound('Sallow Bank');
  markAndName('Sough', { unmarked: true });
  on('2024-04-21');
  relabel({ 'Nuc 2': 'H1', 'Fallow 3': 'H2', 'Fallow 7': 'H3' });
  springRound('High Fallow', { notes: { H2: 'Slate has filled two boxes already.' } });
  on('2024-05-04');
  drones('Sallow Bank', { ownShare: 0.3, background: 'valley bees', backgroundKinship: 0.02 });
  on('2024-05-11');
  wash('Sallow Bank');
  on('2024-05-12');
  wash('High Fallow');
  drones('High Fallow', { ownShare: 0.65, background: 'forest bees', backgroundKinship: 0.04 });
}

function lateMay({ on, split, graft, summerRound, correct }: Telling): void {
  const frames = { eggs: 1, emergingBrood: 1, stores: 1, shakenBees: 1 };
  on('2024-05-25');
  summerRound('Sallow Bank', { seen: { S6: { openCells: 4, swarmTendency: 3 } } });
  split('S1', [part('S1', oldQueen), part('S8', raises('Rill'), frames)]);
  split('S3', [part('S3', oldQueen), part('S9', raises('Ford'), frames)]);
  split('S4', [part('S4', oldQueen), part('S15', raises('Burn'), frames)]);
  on('2024-05-26');
  split('S7', [part('S7', oldQueen), part('S11', raises('[first virgin of S11]'), frames)]);
  on('2024-05-29');
  const grafted = graft('S5', {
    name: 'Hazel graft',
    dam: 'Hazel',
    larvae: 18,
    larvaAgeDays: 1,
    remark: 'Her last, I suppose.',
  });
  on('2024-05-31');
  correct(grafted, { accepted: 11 });
  on('2024-06-01');
  split(
    'H2',
    [part('H4', oldQueen, { emergingBrood: 2, stores: 1, shakenBees: 1 }), part('H2', raises('Beck'))],
    'Slate goes into a nucleus; she is promised to Pell.',
  );
  split('H1', [part('H1', oldQueen), part('H5', raises('Eddy'), frames)]);
  split('H3', [part('H3', oldQueen), part('H6', raises('[first virgin of H6]'), frames)]);
}

function june({ on, split, cellsGiven, eggsGiven, look, lose, summerRound, inseminate }: Telling): void {
  on('2024-06-07');
  const frames = { emergingBrood: 1, stores: 1, shakenBees: 1 };
  split('S5', [
    part('S5', oldQueen),
    part('S12', noQueen, frames),
    part('S13', noQueen, frames),
    part('S14', noQueen, frames),
  ]);
  split('S3', [part('S3', oldQueen), part('S16', noQueen, frames), part('S10', noQueen, frames)]);
  on('2024-06-08');
  const cell = {
    dam: 'Hazel',
    from: 'S5',
    age: 'capped',
    cells: 1,
    eggsLaid: '2024-05-25',
    graft: 'Hazel graft',
  } as const;
  cellsGiven('S12', { queen: 'Weir', ...cell });
  cellsGiven('S13', { queen: 'Spate', ...cell });
  cellsGiven('S14', {
    queen: 'Brook',
    ...cell,
    remark: 'Excluder over the entrance: she is to be inseminated.',
  });
  cellsGiven('S16', { queen: '[cell of S16]', ...cell });
  cellsGiven('S10', { queen: 'Shoal', ...cell });
  on('2024-06-10');
  look('S6', { openCells: 2, cappedCells: 6, swarmTendency: 2, queenSeen: 'seen-marked' });
  split(
    'S6',
    [
      part('S18', oldQueen, { emergingBrood: 2, stores: 1, shakenBees: 2 }),
      part('S6', raises('Lode', 'capped-cells')),
    ],
    'They would have gone tomorrow.',
  );
  on('2024-06-15');
  summerRound('Sallow Bank');
  look('S16', { cappedCells: 0, tornCells: 1 });
  lose('[cell of S16]', 'failed-to-emerge', 'Torn open from the side.');
  eggsGiven('S16', { queen: 'Fosse', from: 'S3' });
  on('2024-06-16');
  summerRound('High Fallow');
  on('2024-06-22');
  inseminate('Brook', 'Gneiss', {
    effectiveMates: 8,
    remark: 'Twelve days old, with the drones of S3 only. Gneiss is the gentle side.',
  });
}

function confirmations({ on, confirm, look, lose, eggsGiven, markAndName, cellsFound }: Telling): void {
  on('2024-06-29');
  confirm('Rill');
  confirm('Ford', 'worker-brood');
  confirm('Burn');
  look('S11', { eggs: false, queenSeen: 'not-seen', emergedCells: 2 });
  lose('[first virgin of S11]', 'not-found');
  eggsGiven('S11', { queen: 'Mere', from: 'S1', remark: 'Late in the year for it, but they are good bees.' });
  on('2024-07-03');
  confirm('Weir');
  confirm('Spate');
  confirm('Shoal');
  markAndName('Rill', { mark: '23' });
  markAndName('Ford', { mark: '24' });
  markAndName('Weir', { mark: '25' });
  on('2024-07-04');
  confirm('Beck', 'worker-brood');
  confirm('Eddy');
  look('H6', { droneBroodOnly: true, eggs: true });
  lose('[first virgin of H6]', 'failed-to-mate');
  on('2024-07-06');
  confirm('Brook');
  confirm('Lode', 'worker-brood');
  for (const name of ['Spate', 'Shoal', 'Burn']) markAndName(name);
  markAndName('Brook', { mark: '29' });
  cellsFound(
    'S2',
    'Tarn',
    'supersedure',
    'Hazel',
    'One pale cell in the middle of her comb. I leave it to them.',
  );
}

function slateIsGivenAway(tell: Telling): void {
  const { on, giveAway, putInto, join, keeperBegins, penTo, openYard, startColony, note, markAndName } = tell;
  on('2024-07-07');
  giveAway(
    'Slate',
    'Pell Brackwater',
    'In a cage with six of her workers, for a jar of honey and news of her daughters.',
  );
  putInto('Weir', 'H4', { how: 'caged', remark: 'From S12, to take the place of Slate.' });
  join('S12', 'S9');
  join('H6', 'H5', 'After taking out what was left of the drone brood.');
  markAndName('Beck', { mark: '27' });
  markAndName('Eddy');
  on('2024-07-08');
  keeperBegins('Pell Brackwater');
  openYard('Marl Pit', {
    where: 'Old pit by the lake, sheltered from the north',
    roundOrder: 1,
    day: '2015',
  });
  startColony('P1', 'Marl Pit', {
    how: 'already-here',
    size: 0.7,
    day: '2022-05',
    remark: 'Queenless since June.',
  });
  putInto('Slate', 'P1', { how: 'caged', remark: 'Released by the workers on the third day.' });
  note('A dark queen with a yellow dot and a 7. Calm on the comb.', { hive: 'P1' });
  penTo('Wenna Oldfallow');
}

function highSummer({
  on,
  summerRound,
  confirm,
  markAndName,
  pinTest,
  wash,
  washMisread,
  harvest,
  treat,
  note,
  endColony,
}: Telling): void {
  on('2024-07-13');
  summerRound('Sallow Bank');
  markAndName('Lode', { mark: '31' });
  on('2024-07-14');
  summerRound('High Fallow');
  on('2024-07-20');
  confirm('Fosse', 'worker-brood');
  pinTest(['S1', 'S3', 'S4', 'S5', 'S7'], 10);
  on('2024-07-21');
  pinTest(['H1', 'H3'], 10);
  on('2024-07-27');
  wash(['S1', 'S2', 'S3', 'S4', 'S5', 'S6', 'S8', 'S9', 'S13']);
  washMisread('S7', 31, 3, '2024-07-29');
  on('2024-07-30');
  const counts = wash(['H1', 'H2', 'H3', 'H5']);
  on('2024-08-03');
  confirm('Mere', 'worker-brood');
  markAndName('Mere', { unmarked: true });
  harvest('Sallow Bank', { kilograms: 9 });
  on('2024-08-04');
  harvest('High Fallow', { kilograms: 7 });
  on('2024-08-10');
  treat('Sallow Bank', {
    active: 'formic acid',
    manner: 'Evaporated from a pad under the lid',
    end: '2024-08-24',
  });
  endColony('S15', 'sold', 'Burn, to a beginner.');
  endColony('S10', 'sold', 'Shoal, to the same.');
  on('2024-08-11');
  treat(above(counts, 2), {
    active: 'formic acid',
    manner: 'Evaporated from a pad under the lid',
    end: '2024-08-25',
    remark: 'Up here only those above two in a hundred.',
  });
  on('2024-08-17');
  confirm('Tarn', 'queen-laying');
  markAndName('Tarn', { mark: '33' });
  note('Hazel and Tarn on two sides of one comb, both laying. Six summers, then.', { hive: 'S2' });
}

function towardsWinter({ on, wash, feed, autumnRound, drop, treat, penTo, markAndName }: Telling): void {
  on('2024-09-14');
  wash(['S1', 'S3', 'S4', 'S7']);
  feed(['S8', 'S9', 'S11', 'S14', 'S16', 'S18'], 'syrup', 7);
  markAndName('Fosse');
  on('2024-09-15');
  wash('High Fallow');
  on('2024-09-28');
  autumnRound('Sallow Bank', {
    notes: { S2: 'Only Tarn to be seen now.', S11: 'Four frames. Too late a start.' },
  });
  on('2024-09-29');
  autumnRound('High Fallow');
  on('2024-10-05');
  penTo('Pell Brackwater');
  autumnRound('Marl Pit', { notes: { P1: 'Nine frames, and not a mark of the summer on them.' } });
  penTo('Wenna Oldfallow');
  on('2024-11-02');
  drop(['S1', 'S3', 'S4', 'S5', 'S7'], 5);
  on('2024-12-01');
  treat('Sallow Bank', {
    active: 'oxalic acid',
    manner: 'Trickled into the broodless cluster',
    end: '2024-12-04',
    left: 0.15,
  });
  on('2024-12-02');
  treat('High Fallow', {
    active: 'oxalic acid',
    manner: 'Trickled into the broodless cluster',
    end: '2024-12-05',
    left: 0.15,
  });
}
