import { above, noQueen, oldQueen, part, raises, type Telling } from '../telling/index.ts';

/** Hazel is split three ways, her cells travel to another box, and a daughter takes over without anybody's noticing. */
export function season2023(tell: Telling): void {
  spring(tell);
  lateMay(tell);
  earlyJune(tell);
  midJune(tell);
  july(tell);
  august(tell);
  towardsWinter(tell);
}

function spring({ on, winterWalk, springRound, drones, wash, look, lose, note, drop }: Telling): void {
  on('2023-03-29');
  winterWalk('Sallow Bank', { 'Nuc 5': 'damp-or-cold' });
  on('2023-04-02');
  winterWalk('High Fallow', { 'Fallow 5': 'animal-or-weather' });
  note('The marten again: Fallow 5 lay open on its side in the snow. No fault of the bees.', {
    yard: 'High Fallow',
  });
  on('2023-04-26');
  springRound('Sallow Bank', { notes: { Hazel: 'Another winter behind her. The strongest of all.' } });
  on('2023-04-27');
  springRound('High Fallow');
  on('2023-05-06');
  drones('Sallow Bank', {
    ownShare: 0.35,
    background: 'valley bees',
    backgroundKinship: 0.02,
    colonies: { Hazel: 3, Sorrel: 2, 'Nuc 4': 1, Linden: 0.5 },
  });
  drop(['Hazel', 'Sorrel', 'Eaves'], 3);
  on('2023-05-07');
  drones('High Fallow', { ownShare: 0.6, background: 'forest bees', backgroundKinship: 0.04 });
  on('2023-05-13');
  wash(['Hazel', 'Sorrel', 'Nuc 4', 'Eaves', 'Nuc 6']);
  on('2023-05-14');
  wash('High Fallow');
  on('2023-05-20');
  look('Linden', { droneBroodOnly: true, eggs: true, queenSeen: 'seen-unmarked' });
  lose('Tuff', 'drone-layer', 'Ran out of sperm in her first spring. Pinched.');
}

function lateMay({ on, split, graft }: Telling): void {
  on('2023-05-27');
  split(
    'Hazel',
    [
      part(
        'Nuc 7',
        oldQueen,
        { emergingBrood: 1, stores: 1, shakenBees: 1 },
        { stand: 'by the plum tree', entrance: 'E' },
      ),
      part('Hazel', raises('Gale')),
      part(
        'Nuc 8',
        raises('[first virgin of Nuc 8]'),
        { eggs: 1, emergingBrood: 2, stores: 1, shakenBees: 2 },
        { entrance: 'W' },
      ),
    ],
    'Three ways, before they thought of swarming. The old lady has a frame of emerging brood and one of stores.',
  );
  on('2023-05-28');
  const frames = { eggs: 1, emergingBrood: 1, stores: 1, shakenBees: 1 };
  split('Sorrel', [part('Sorrel', oldQueen), part('Nuc 9', raises('Zephyr'), frames)]);
  split('Nuc 4', [part('Nuc 4', oldQueen), part('Nuc 12', raises('Levanter'), frames)]);
  on('2023-05-31');
  graft('Nuc 2', {
    name: 'Rowan graft',
    dam: 'Rowan',
    larvae: 20,
    larvaAgeDays: 1,
    accepted: 13,
    remark: 'Above an excluder, between two frames of open brood.',
  });
}

function earlyJune({ on, split, look, cellsGiven, note }: Telling): void {
  on('2023-06-03');
  split(
    'Eaves',
    [
      part('Eaves', oldQueen),
      part(
        'Eaves east',
        raises('Draught'),
        { eggs: 1, emergingBrood: 2, stores: 1 },
        { underRoofWith: 'Eaves', entrance: 'E' },
      ),
    ],
    'One box, a board down the middle, the new half with its entrance to the east.',
  );
  on('2023-06-04');
  look('Hazel', { cappedCells: 9, openCells: 0, eggs: false });
  look('Nuc 8', { cappedCells: 3 });
  look('Linden', { eggs: false, queenSeen: 'not-seen', openCells: 0 });
  cellsGiven('Linden', {
    queen: 'Norther',
    dam: 'Hazel',
    from: 'Hazel',
    age: 'capped',
    cells: 3,
    remark:
      'A frame with three cells out of the box Hazel. The eggs were hers, laid before she was taken out.',
  });
  note('So the box Linden will have a daughter of Hazel. I must stop calling boxes after queens.', {
    hive: 'Linden',
  });
}

function midJune({
  on,
  split,
  look,
  lose,
  cellsFound,
  cellsGiven,
  eggsGiven,
  summerRound,
  move,
}: Telling): void {
  on('2023-06-09');
  const frames = { emergingBrood: 1, stores: 1, shakenBees: 1 };
  split('Nuc 2', [
    part('Nuc 2', oldQueen),
    part('Fallow 7', noQueen, frames),
    part('Fallow 8', noQueen, frames),
    part('Fallow 11', noQueen, frames),
  ]);
  split('Fallow 3', [
    part('Fallow 3', oldQueen),
    part('Fallow 9', noQueen, frames),
    part('Fallow 10', noQueen, frames),
    part('Fallow 12', noQueen, frames),
  ]);
  on('2023-06-10');
  const cell = {
    dam: 'Rowan',
    from: 'Nuc 2',
    age: 'capped',
    cells: 1,
    eggsLaid: '2023-05-27',
    graft: 'Rowan graft',
  } as const;
  cellsGiven('Fallow 7', { queen: 'Bora', ...cell });
  cellsGiven('Fallow 8', { queen: '[first virgin of Fallow 8]', ...cell });
  cellsGiven('Fallow 9', { queen: 'Mistral', ...cell });
  cellsGiven('Fallow 10', { queen: '[cell of Fallow 10]', ...cell });
  cellsGiven('Fallow 11', { queen: 'Bise', ...cell });
  cellsGiven('Fallow 12', { queen: 'Ostro', ...cell });
  on('2023-06-12');
  look('Nuc 6', { queenSeen: 'not-seen', eggs: false, cappedCells: 7, swarmTendency: 1 });
  lose('Opal', 'swarmed', 'The box half empty, the swarm nowhere.');
  cellsFound('Nuc 6', 'Squall', 'swarm', 'Opal', 'Left the two best.');
  const swarmCells = {
    how: 'given-cells',
    dam: 'Opal',
    cellsFrom: 'Nuc 6',
    age: 'capped',
    cells: 2,
  } as const;
  split('Nuc 6', [
    part('Nuc 10', { ...swarmCells, name: 'Flurry' }, { emergingBrood: 1, stores: 1, shakenBees: 1 }),
    part('Nuc 11', { ...swarmCells, name: 'Gust' }, { emergingBrood: 1, stores: 1 }),
  ]);
  on('2023-06-17');
  summerRound('Sallow Bank', { notes: { Sorrel: 'Worked them in shirt sleeves.' } });
  move(['Eaves'], 'Sallow Bank', { underRoofWith: 'Eaves east', entrance: 'W' });
  on('2023-06-18');
  summerRound('High Fallow');
  look('Fallow 10', { cappedCells: 1, note: 'Cell cold and dark, nothing alive in it.' });
  lose('[cell of Fallow 10]', 'failed-to-emerge', 'Chilled on the way, I think.');
  eggsGiven('Fallow 10', { queen: 'Haar', from: 'Fallow 3' });
}

function july({
  on,
  confirm,
  look,
  lose,
  join,
  markAndName,
  summerRound,
  silentlySucceeded,
  note,
  pinTest,
}: Telling): void {
  on('2023-06-28');
  confirm('Gale');
  confirm('Zephyr');
  confirm('Levanter');
  look('Nuc 8', { eggs: false, emergedCells: 1, queenSeen: 'not-seen' });
  on('2023-07-04');
  confirm('Norther', 'worker-brood');
  confirm('Draught');
  on('2023-07-05');
  confirm('Bora');
  confirm('Mistral');
  confirm('Bise');
  confirm('Ostro');
  look('Fallow 8', { eggs: false, queenSeen: 'not-seen', emergedCells: 1 });
  on('2023-07-08');
  look('Nuc 8', { droneBroodOnly: true, severalEggsInCells: false, eggs: true });
  lose('[first virgin of Nuc 8]', 'failed-to-mate');
  join('Nuc 8', 'Linden', 'Over newspaper.');
  markAndName('Gale', { mark: '11' });
  markAndName('Norther', { mark: '14' });
  on('2023-07-09');
  lose('[first virgin of Fallow 8]', 'not-found', 'Hatched and never came back from a flight.');
  join('Fallow 8', 'Fallow 9');
  on('2023-07-11');
  for (const name of ['Squall', 'Flurry', 'Gust']) confirm(name);
  on('2023-07-15');
  summerRound('Sallow Bank', { notes: { 'Nuc 7': 'The old lady, five summers, on three frames of brood.' } });
  for (const name of ['Zephyr', 'Levanter', 'Draught', 'Flurry']) markAndName(name);
  on('2023-07-16');
  summerRound('High Fallow');
  for (const name of ['Bora', 'Mistral', 'Bise', 'Ostro']) markAndName(name);
  on('2023-07-20');
  silentlySucceeded('Flint', 'Sough');
  on('2023-07-22');
  for (const name of ['Squall', 'Gust']) markAndName(name, { unmarked: true });
  pinTest(['Sorrel', 'Nuc 4', 'Eaves', 'Nuc 6'], 10);
  note('Pins read after ten hours, all in one evening.');
  on('2023-07-23');
  pinTest(['Nuc 1', 'Nuc 2', 'Fallow 3'], 10);
  confirm('Haar', 'worker-brood');
}

function august({
  on,
  wash,
  write,
  hive,
  takeBack,
  harvest,
  treat,
  endColony,
  markAndName,
  daughterFound,
  noteOn,
}: Telling): void {
  on('2023-07-29');
  const counts = wash('Sallow Bank');
  on('2023-07-30');
  const countsAbove = wash(['Nuc 1', 'Nuc 2', 'Fallow 3', 'Fallow 7']);
  on('2023-08-05');
  harvest('Sallow Bank', { kilograms: 13 });
  const sorrel = hive('Sorrel');
  if (sorrel) {
    const twice = write({ kind: 'harvest', colony: sorrel.id, kilograms: 16 });
    takeBack(twice, 'Written down twice: the pail of Sorrel was in already.');
  }
  on('2023-08-06');
  harvest('High Fallow', { kilograms: 9 });
  on('2023-08-12');
  const formic = {
    active: 'formic acid',
    manner: 'Evaporated from a pad under the lid',
    end: '2023-08-26',
    remark: 'Only those above two in a hundred. The others go on without.',
  } as const;
  treat(above(counts, 2), formic);
  markAndName('Haar');
  endColony('Nuc 12', 'sold', 'Levanter, to a beginner.');
  on('2023-08-13');
  treat(above(countsAbove, 2), { ...formic, end: '2023-08-27' });
  endColony('Fallow 10', 'sold', 'Haar, to the same beginner.');
  endColony('Fallow 11', 'sold', 'Bise, to the school garden.');
  endColony('Fallow 12', 'sold', 'Ostro, to the school garden.');
  on('2023-09-02');
  daughterFound('Sough', 'Flint', {
    probability: 0.85,
    born: '2023-07',
    remark:
      'An unmarked queen, and Flint wore yellow with a 4. Two old cups mid-comb. Probably her daughter; how long since, I cannot tell.',
  });
  noteOn('Sough', 'Left unmarked on purpose until spring: she ran.');
}

function towardsWinter({ on, wash, feed, autumnRound, drop, treat }: Telling): void {
  on('2023-09-16');
  wash(['Hazel', 'Sorrel', 'Nuc 4', 'Eaves', 'Nuc 6']);
  feed(['Nuc 7', 'Nuc 9', 'Nuc 10', 'Nuc 11', 'Eaves east'], 'syrup', 7);
  on('2023-09-17');
  wash(['Nuc 1', 'Fallow 3']);
  feed(['Fallow 7', 'Fallow 9'], 'syrup', 6);
  on('2023-09-30');
  autumnRound('Sallow Bank', { notes: { 'Nuc 7': 'Five frames and the old lady. I would not bet on it.' } });
  on('2023-10-01');
  autumnRound('High Fallow', { notes: { 'Nuc 1': 'Rowan looks worn.' } });
  on('2023-11-04');
  drop(['Hazel', 'Sorrel', 'Nuc 4', 'Nuc 6', 'Eaves'], 5);
  on('2023-12-02');
  treat('Sallow Bank', {
    active: 'oxalic acid',
    manner: 'Trickled into the broodless cluster',
    end: '2023-12-05',
    left: 0.15,
  });
  on('2023-12-03');
  treat('High Fallow', {
    active: 'oxalic acid',
    manner: 'Trickled into the broodless cluster',
    end: '2023-12-06',
    left: 0.15,
  });
}
