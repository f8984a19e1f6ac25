import { noQueen, oldQueen, part, raises, type Telling, WITH_EGGS, WITHOUT_EGGS } from '../telling/index.ts';
import { summer2025 } from './2025-summer.ts';

/** Many nuclei, half of them right; a lost queen comes back with her number; Pell splits what Slate has built. */
export function season2025(tell: Telling): void {
  spring(tell);
  splits(tell);
  june(tell);
  summer2025(tell);
}

function spring(tell: Telling): void {
  const { winterWalk, springRound, summerRound, drones, wash, on, endColony, penTo } = tell;
  on('2025-04-05');
  winterWalk('Sallow Bank', { S4: 'mites', S18: 'winter', S11: 'starved', S16: 'winter' });
  on('2025-04-06');
  winterWalk('High Fallow', { H1: 'queenless' });
  on('2025-04-12');
  penTo('Pell Brackwater');
  winterWalk('Marl Pit', {});
  penTo('Wenna Oldfallow');
  on('2025-04-25');
  springRound('Sallow Bank', { notes: { S14: 'Brook: the drones of S3 have sweetened them.' } });
  on('2025-04-26');
  springRound('High Fallow');
  on('2025-05-03');
  drones('Sallow Bank', {
    ownShare: 0.4,
    background: 'valley bees',
    backgroundKinship: 0.02,
    colonies: { S1: 2, S3: 3, S5: 2, S7: 1, S8: 1 },
  });
  penTo('Pell Brackwater');
  springRound('Marl Pit', {
    seen: { P1: { framesOfBees: 9.5, gentle: 3.5 } },
    notes: { P1: 'Nine frames and a half in early May. I have not seen that here.' },
  });
  drones('Marl Pit', { ownShare: 0.1, background: 'lake bees' });
  penTo('Wenna Oldfallow');
  on('2025-05-04');
  drones('High Fallow', { ownShare: 0.7, background: 'forest bees', backgroundKinship: 0.04 });
  on('2025-05-10');
  wash('Sallow Bank');
  endColony('S13', 'sold', 'Spate, wintered, to a keeper in the next valley.');
  on('2025-05-11');
  wash('High Fallow');
  endColony('H5', 'sold', 'Eddy, to the same.');
  on('2025-05-17');
  summerRound('Sallow Bank');
}

function splits(tell: Telling): void {
  const { on, split, splitOff, move, penTo, framesMoved } = tell;
  on('2025-05-24');
  split(
    'S3',
    [
      part('S3', oldQueen),
      part(
        'S19',
        raises('Tansy'),
        { eggs: 1, emergingBrood: 2, stores: 1 },
        { underRoofWith: 'S3', entrance: 'E' },
      ),
    ],
    'Board down the middle of the long box; the new half looks east.',
  );
  move(['S3'], 'Sallow Bank', { underRoofWith: 'S19', entrance: 'W' });
  framesMoved(
    'S9',
    'S19',
    { emergingBrood: 1 },
    { aboveExcluder: true, remark: 'Two weeks above the excluder, to fill it up.' },
  );
  on('2025-05-25');
  split(
    'S1',
    [
      part('S20', oldQueen, WITHOUT_EGGS),
      part('S1', raises('Yarrow')),
      part('S21', raises('[first virgin of S21]'), WITH_EGGS),
    ],
    'Gale goes into a nucleus, as her dam did.',
  );
  splitOff('S7', 'S22', raises('Vetch'));
  on('2025-05-30');
  splitOff('H3', 'H7', raises('Madder'));
  splitOff('H4', 'H8', raises('[first virgin of H8]'));
  on('2025-05-31');
  splitOff('S2', 'S23', raises('[first virgin of S23]'));
  splitOff('S14', 'S24', raises('Comfrey'));
  penTo('Pell Brackwater');
  split('P1', [
    part('P1', oldQueen),
    part('P2', raises('Sable'), WITH_EGGS),
    part('P3', raises('Umber'), WITH_EGGS),
    part('P4', raises('[first virgin of P4]'), WITH_EGGS),
  ]);
  penTo('Wenna Oldfallow');
}

function june(tell: Telling): void {
  const { startColony, summerRound, on, split, look, lose, cellsGiven, cellsFound, graft, putInto } = tell;
  on('2025-06-05');
  graft('S5', {
    name: 'Rill graft',
    dam: 'Rill',
    larvae: 16,
    larvaAgeDays: 1,
    accepted: 10,
    remark: 'The gentlest of the hardy ones.',
  });
  on('2025-06-14');
  split('S8', [part('S8', oldQueen), part('S25', noQueen, WITHOUT_EGGS), part('S26', noQueen, WITHOUT_EGGS)]);
  split('S9', [part('S9', oldQueen), part('S27', noQueen, WITHOUT_EGGS), part('S28', noQueen, WITHOUT_EGGS)]);
  summerRound('Sallow Bank', { skip: ['S6'] });
  look('S6', { queenSeen: 'not-seen', eggs: false, cappedCells: 5, swarmTendency: 1 });
  lose('Lode', 'swarmed', 'Gone, and it had only been nine days since I looked.');
  cellsFound('S6', 'Clover', 'swarm', 'Lode', 'Left one cell.');
  on('2025-06-15');
  const cell = {
    dam: 'Rill',
    from: 'S5',
    age: 'capped',
    cells: 1,
    eggsLaid: '2025-06-01',
    graft: 'Rill graft',
  } as const;
  cellsGiven('S25', { queen: 'Campion', ...cell });
  cellsGiven('S26', { queen: '[first virgin of S26]', ...cell });
  cellsGiven('S27', { queen: 'Lovage', ...cell });
  cellsGiven('S28', { queen: 'Burnet', ...cell });
  summerRound('High Fallow');
  on('2025-06-21');
  startColony('S29', 'Sallow Bank', {
    how: 'swarm-taken',
    from: 'In the pear tree of the neighbour beyond the brook',
    size: 0.45,
    box: 'ten-frame box',
  });
  putInto('Lode', 'S29', {
    how: 'direct',
    remark:
      'Found again: the swarm from the pear tree has a queen with a green dot and the number 31. That is Lode.',
  });
  look('S23', { emergedCells: 1, queenSeen: 'virgin' });
}
