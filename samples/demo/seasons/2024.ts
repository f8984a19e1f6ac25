import { noQueen, oldQueen, part, raises, type Telling, WITHOUT_EGGS } from '../telling/index.ts';
import { summer2024 } from './2024-summer.ts';

/** A hard winter, new labels, a queen for another breeder, and one mating that is known to the drone. */
export function season2024(tell: Telling): void {
  spring(tell);
  lateMay(tell);
  june(tell);
  summer2024(tell);
}

function spring(tell: Telling): void {
  const { note, winterWalk, springRound, drones, wash, on, markAndName, relabel } = tell;
  on('2024-04-06');
  winterWalk('Sallow Bank', {
    'Nuc 6': 'starved',
    'Nuc 11': 'winter',
    'Nuc 9': 'mites',
    Eaves: 'damp-or-cold',
  });
  note('Thirty below in January and a wet March. The old lady came through, five frames in and three out.');
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
  springRound('High Fallow', { notes: { H2: 'Slate is a week ahead of the others.' } });
  on('2024-05-04');
  drones('Sallow Bank', { ownShare: 0.3, background: 'valley bees', backgroundKinship: 0.02 });
  on('2024-05-11');
  wash('Sallow Bank');
  on('2024-05-12');
  wash('High Fallow');
  drones('High Fallow', { ownShare: 0.65, background: 'forest bees', backgroundKinship: 0.04 });
}

function lateMay(tell: Telling): void {
  const { summerRound, on, split, splitOff, graft, correct } = tell;
  on('2024-05-25');
  summerRound('Sallow Bank', { seen: { S6: { openCells: 4, swarmTendency: 3 } } });
  splitOff('S1', 'S8', raises('Rill'));
  splitOff('S3', 'S9', raises('Ford'));
  splitOff('S4', 'S15', raises('Burn'));
  on('2024-05-26');
  splitOff('S7', 'S11', raises('[first virgin of S11]'));
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
  splitOff('H1', 'H5', raises('Eddy'));
  splitOff('H3', 'H6', raises('[first virgin of H6]'));
}

function june(tell: Telling): void {
  const { summerRound, on, split, look, lose, eggsGiven, cellsGiven, inseminate } = tell;
  on('2024-06-07');
  split('S5', [
    part('S5', oldQueen),
    part('S12', noQueen, WITHOUT_EGGS),
    part('S13', noQueen, WITHOUT_EGGS),
    part('S14', noQueen, WITHOUT_EGGS),
  ]);
  split('S3', [part('S3', oldQueen), part('S16', noQueen, WITHOUT_EGGS), part('S10', noQueen, WITHOUT_EGGS)]);
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
