import { above, noQueen, oldQueen, part, raises, type Telling } from '../telling/index.ts';

/** Many nuclei, half of them right; a lost queen comes back with her number; Pell splits what Slate has built. */
export function season2025(tell: Telling): void {
  spring(tell);
  splits(tell);
  june(tell);
  earlyJuly(tell);
  july(tell);
  august(tell);
  towardsWinter(tell);
}

function spring({ on, winterWalk, springRound, drones, wash, endColony, penTo, summerRound }: Telling): void {
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
  springRound('Marl Pit', { notes: { P1: 'Two full boxes in early May. I have not seen that here.' } });
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

function splits({ on, split, move, framesMoved, penTo }: Telling): void {
  const frames = { eggs: 1, emergingBrood: 1, stores: 1, shakenBees: 1 };
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
      part('S20', oldQueen, { emergingBrood: 1, stores: 1, shakenBees: 1 }),
      part('S1', raises('Yarrow')),
      part('S21', raises('[first virgin of S21]'), frames),
    ],
    'Gale goes into a nucleus, as her dam did.',
  );
  split('S7', [part('S7', oldQueen), part('S22', raises('Vetch'), frames)]);
  on('2025-05-30');
  split('H3', [part('H3', oldQueen), part('H7', raises('Madder'), frames)]);
  split('H4', [part('H4', oldQueen), part('H8', raises('[first virgin of H8]'), frames)]);
  on('2025-05-31');
  split('S2', [part('S2', oldQueen), part('S23', raises('[first virgin of S23]'), frames)]);
  split('S14', [part('S14', oldQueen), part('S24', raises('Comfrey'), frames)]);
  penTo('Pell Brackwater');
  split('P1', [
    part('P1', oldQueen),
    part('P2', raises('Sable'), frames),
    part('P3', raises('Umber'), frames),
    part('P4', raises('[first virgin of P4]'), frames),
  ]);
  penTo('Wenna Oldfallow');
}

function june(tell: Telling): void {
  const { on, graft, split, cellsGiven, look, lose, cellsFound, summerRound, startColony, putInto } = tell;
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
  const frames = { emergingBrood: 1, stores: 1, shakenBees: 1 };
  split('S8', [part('S8', oldQueen), part('S25', noQueen, frames), part('S26', noQueen, frames)]);
  split('S9', [part('S9', oldQueen), part('S27', noQueen, frames), part('S28', noQueen, frames)]);
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
    overruled: [
      {
        rule: 'queen-already-lost',
        reason:
          'Found again: the swarm from the pear tree has a queen with a green dot and the number 31. That is Lode.',
      },
    ],
  });
  look('S23', { emergedCells: 1, queenSeen: 'virgin' });
}

function earlyJuly({
  on,
  confirm,
  look,
  lose,
  join,
  eggsGiven,
  markAndName,
  penTo,
  summerRound,
  pinTest,
}: Telling): void {
  on('2025-06-28');
  confirm('Tansy');
  confirm('Yarrow');
  confirm('Vetch');
  look('S21', { eggs: false, queenSeen: 'not-seen', emergedCells: 2 });
  on('2025-06-29');
  confirm('Madder');
  look('H8', { droneBroodOnly: true, eggs: true, severalEggsInCells: false });
  lose('[first virgin of H8]', 'failed-to-mate', 'Rain from the 12th to the 23rd.');
  eggsGiven('H8', { queen: 'Teasel', from: 'H2' });
  on('2025-07-03');
  penTo('Pell Brackwater');
  summerRound('Marl Pit');
  confirm('Sable', 'worker-brood');
  confirm('Umber');
  look('P4', { eggs: false, queenSeen: 'not-seen' });
  lose('[first virgin of P4]', 'not-found');
  join('P4', 'P2');
  markAndName('Sable');
  markAndName('Umber');
  pinTest(['P1'], 10);
  penTo('Wenna Oldfallow');
  on('2025-07-05');
  lose('[first virgin of S21]', 'not-found');
  join('S21', 'S20', 'Back to Gale they go.');
  confirm('Comfrey', 'worker-brood');
  look('S23', { eggs: false, queenSeen: 'virgin', note: 'Five weeks, still running about like a maiden.' });
  lose('[first virgin of S23]', 'failed-to-mate');
  eggsGiven('S23', { queen: 'Hyssop', from: 'S5' });
  markAndName('Tansy', { mark: '41' });
  markAndName('Yarrow', { mark: '42' });
  markAndName('Vetch', { mark: '43' });
}

function july({ on, confirm, look, lose, join, markAndName, summerRound, pinTest }: Telling): void {
  on('2025-07-12');
  for (const name of ['Clover', 'Campion', 'Lovage', 'Burnet']) confirm(name);
  look('S26', { eggs: false, queenSeen: 'not-seen', emergedCells: 1 });
  lose('[first virgin of S26]', 'not-found');
  join('S26', 'S25');
  on('2025-07-19');
  summerRound('Sallow Bank', { notes: { S7: 'Veil up, gloves on, and still stung through the sleeve.' } });
  for (const name of ['Clover', 'Campion', 'Lovage', 'Burnet', 'Comfrey']) markAndName(name);
  pinTest(['S1', 'S3', 'S5', 'S7', 'S9', 'S14'], 10);
  on('2025-07-20');
  summerRound('High Fallow');
  markAndName('Madder', { mark: '46' });
  pinTest(['H2', 'H3', 'H4'], 10);
}

function august({
  on,
  confirm,
  harvest,
  treat,
  treatmentOut,
  endColony,
  feed,
  wash,
  join,
  markAndName,
  note,
}: Telling): void {
  on('2025-07-26');
  const counts = wash('Sallow Bank');
  note(
    'White bowl, alcohol kept away from the stove. The bees of the sample are dead afterwards; that is the price.',
  );
  on('2025-07-27');
  const countsAbove = wash('High Fallow');
  on('2025-08-02');
  harvest('Sallow Bank', { kilograms: 12 });
  on('2025-08-03');
  harvest('High Fallow', { kilograms: 10 });
  confirm('Teasel', 'worker-brood');
  on('2025-08-08');
  confirm('Hyssop', 'worker-brood');
  on('2025-08-09');
  const trays = treat(above(counts, 2), {
    active: 'thymol',
    manner: 'Trays on the top bars',
    remark: 'Those above two in a hundred.',
  });
  endColony('S24', 'sold', 'Comfrey, to a beginner.');
  endColony('S27', 'sold', 'Lovage, to a beginner.');
  endColony('S28', 'sold', 'Burnet, to the school garden.');
  on('2025-08-10');
  treat(above(countsAbove, 2), {
    active: 'formic acid',
    manner: 'Evaporated from a pad under the lid',
    end: '2025-08-24',
  });
  on('2025-08-16');
  markAndName('Teasel');
  endColony('H8', 'sold', 'Teasel.');
  markAndName('Hyssop');
  endColony('S23', 'sold', 'Hyssop.');
  feed(['S19', 'S20', 'S22', 'S25', 'S29'], 'syrup', 7);
  on('2025-09-13');
  treatmentOut(trays);
  wash(['S3', 'S5', 'S7', 'S9', 'S14']);
  on('2025-09-14');
  wash('High Fallow');
  on('2025-09-20');
  join('S25', 'S8', 'Campion had three frames. Sister to her host, and two weak ones make no winter colony.');
}

function towardsWinter({ on, autumnRound, drop, treat, penTo, wash }: Telling): void {
  on('2025-09-27');
  autumnRound('Sallow Bank', { notes: { S3: 'Gneiss is in her fourth summer and lays in patches.' } });
  on('2025-09-28');
  autumnRound('High Fallow');
  on('2025-10-04');
  penTo('Pell Brackwater');
  wash('Marl Pit');
  autumnRound('Marl Pit', { notes: { P1: 'Slate is slow now. Her daughters are not.' } });
  penTo('Wenna Oldfallow');
  on('2025-11-01');
  drop(['S1', 'S3', 'S5', 'S6', 'S14'], 5);
  on('2025-12-06');
  treat('Sallow Bank', {
    active: 'oxalic acid',
    manner: 'Trickled into the broodless cluster',
    end: '2025-12-09',
    left: 0.15,
  });
}
