import { noQueen, oldQueen, part, raises, type Telling, WITHOUT_EGGS } from '../telling/index.ts';
import { summer2023 } from './2023-summer.ts';

/** Hazel is split three ways, her cells travel to another box, and a daughter takes over without anybody's noticing. */
export function season2023(tell: Telling): void {
  spring(tell);
  lateMay(tell);
  earlyJune(tell);
  midJune(tell);
  summer2023(tell);
}

function spring(tell: Telling): void {
  const { note, winterWalk, springRound, drones, wash, on, look, lose, drop } = tell;
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

function lateMay(tell: Telling): void {
  const { on, split, splitOff, graft } = tell;
  on('2023-05-27');
  split(
    'Hazel',
    [
      part('Nuc 7', oldQueen, WITHOUT_EGGS, { stand: 'by the plum tree', entrance: 'E' }),
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
  splitOff('Sorrel', 'Nuc 9', raises('Zephyr'));
  splitOff('Nuc 4', 'Nuc 12', raises('Levanter'));
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

function earlyJune(tell: Telling): void {
  const { note, on, split, look, cellsGiven } = tell;
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

function midJune(tell: Telling): void {
  const { summerRound, on, split, look, lose, eggsGiven, cellsGiven, cellsFound, move } = tell;
  on('2023-06-09');
  split('Nuc 2', [
    part('Nuc 2', oldQueen),
    part('Fallow 7', noQueen, WITHOUT_EGGS),
    part('Fallow 8', noQueen, WITHOUT_EGGS),
    part('Fallow 11', noQueen, WITHOUT_EGGS),
  ]);
  split('Fallow 3', [
    part('Fallow 3', oldQueen),
    part('Fallow 9', noQueen, WITHOUT_EGGS),
    part('Fallow 10', noQueen, WITHOUT_EGGS),
    part('Fallow 12', noQueen, WITHOUT_EGGS),
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
    part('Nuc 10', { ...swarmCells, name: 'Flurry' }, WITHOUT_EGGS),
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
