import { oldQueen, part, raises, type Telling, WITH_EGGS, WITHOUT_EGGS } from '../telling/index.ts';

/** The season that is under way: the story stops in the middle of splitting. */
export function season2026(tell: Telling): void {
  spring(tell);
  may(tell);
  northerInThreeParts(tell);
  june(tell);
}

function spring(tell: Telling): void {
  const { winterWalk, springRound, drones, wash, on, splitOff, move, relabel, endColony, penTo } = tell;
  on('2026-03-28');
  winterWalk('Sallow Bank', {
    S1: 'starved',
    S2: 'winter',
    S3: 'mites',
    S7: 'damp-or-cold',
    S29: 'mites',
  });
  on('2026-03-29');
  winterWalk('High Fallow', { H4: 'winter' });
  on('2026-04-04');
  penTo('Pell Brackwater');
  winterWalk('Marl Pit', { P1: 'mites' });
  penTo('Wenna Oldfallow');
  on('2026-04-22');
  springRound('Sallow Bank', { notes: { S5: 'Norther, three winters behind her, like her dam before.' } });
  on('2026-04-23');
  springRound('High Fallow');
  on('2026-04-25');
  move(['S14', 'S22'], 'High Fallow');
  relabel({ S14: 'H9', S22: 'H10' });
  on('2026-04-30');
  splitOff(
    'H3',
    'H11',
    raises('[virgin of H11]'),
    WITH_EGGS,
    'Early, because of the warm fortnight. Perhaps too early: few drones yet.',
  );
  on('2026-05-02');
  endColony('H7', 'sold', 'Madder, wintered, to the keeper in the next valley.');
  penTo('Pell Brackwater');
  springRound('Marl Pit', { notes: { P2: 'Sable: nothing fed, and the first drones about.' } });
  penTo('Wenna Oldfallow');
  on('2026-05-03');
  drones('Sallow Bank', {
    ownShare: 0.35,
    background: 'valley bees',
    backgroundKinship: 0.02,
    colonies: { S5: 3, S9: 2, S19: 2, S20: 1, S8: 1 },
  });
  drones('High Fallow', {
    ownShare: 0.7,
    background: 'forest bees',
    backgroundKinship: 0.04,
    colonies: { H2: 2, H3: 3, H9: 2, H10: 1 },
  });
  on('2026-05-09');
  wash('Sallow Bank');
}

function may(tell: Telling): void {
  const { note, summerRound, wash, on, split, look } = tell;
  on('2026-05-10');
  wash('High Fallow');
  on('2026-05-13');
  look('H11', { emergedCells: 1, tornCells: 2, cappedCells: 0 });
  on('2026-05-16');
  summerRound('Sallow Bank', { notes: { S6: 'Cups with eggs along the bottom bars.' } });
  on('2026-05-17');
  summerRound('High Fallow');
  on('2026-05-23');
  look('S6', { openCells: 7, cappedCells: 0, queenSeen: 'seen-marked', swarmTendency: 2 });
  split(
    'S6',
    [
      part('S30', oldQueen, { emergingBrood: 2, stores: 1, shakenBees: 2 }),
      part('S6', raises('[virgin of S6]', 'open-cells')),
    ],
    'Clover with her best frames into a nucleus; two cells left, the rest broken.',
  );
  on('2026-05-24');
  split(
    'H2',
    [
      part('H2', oldQueen),
      part(
        'H12',
        raises('[queen of H12]'),
        { eggs: 1, emergingBrood: 2, stores: 1 },
        { underRoofWith: 'H2', entrance: 'N' },
      ),
    ],
    'A board down the middle again. The new half looks north, H2 south.',
  );
  note('Lupins late, lime trees early.', { yard: 'High Fallow' });
}

function northerInThreeParts(tell: Telling): void {
  const { on, split, look, move } = tell;
  on('2026-05-25');
  move(['H2'], 'High Fallow', { underRoofWith: 'H12', entrance: 'S' });
  on('2026-05-26');
  split(
    'S5',
    [
      part('S31', oldQueen, WITHOUT_EGGS, { stand: 'by the plum tree', entrance: 'E' }),
      part('S5', raises('[queen of S5]')),
      part(
        'S32',
        raises('[queen of S32]'),
        { eggs: 2, emergingBrood: 1, stores: 1, shakenBees: 2 },
        { entrance: 'W' },
      ),
    ],
    'Three ways, as with Hazel three years ago. Norther in the nucleus, the stand keeps the flying bees.',
  );
  look('S8', {
    eggs: false,
    youngBrood: false,
    cappedWorkerBrood: true,
    queenSeen: 'not-seen',
    openCells: 0,
  });
}

function june(tell: Telling): void {
  const { note, summerRound, on, look, lose, cellsGiven, cellsFound, graft, correct, penTo } = tell;
  on('2026-06-02');
  look('S8', { eggs: false, queenSeen: 'not-seen', openCells: 0, cappedCells: 0 });
  lose('Rill', 'not-found', 'Nothing laid for two weeks and no cell. I must have crushed her in May.');
  on('2026-06-03');
  look('S5', { cappedCells: 8, openCells: 1, eggs: false });
  look('S32', { cappedCells: 4, eggs: false });
  cellsGiven('S8', {
    queen: '[queen of S8]',
    dam: 'Norther',
    from: 'S5',
    age: 'capped',
    cells: 3,
    remark: 'A frame with three cells from S5. Eggs of Norther, who left there on 26 May.',
  });
  on('2026-06-04');
  penTo('Pell Brackwater');
  summerRound('Marl Pit');
  cellsFound('P3', '[queen of P3]', 'supersedure', 'Umber', 'Two cells mid-comb, and Umber limps.');
  penTo('Wenna Oldfallow');
  on('2026-06-05');
  const grafted = graft('S19', {
    name: 'Gale graft',
    dam: 'Gale',
    larvae: 15,
    larvaAgeDays: 1,
    remark: 'From S20. Above the excluder; not before the 15th to be given out.',
  });
  note('Pell sent his file. Slate did not see the spring; both her daughters there did.');
  on('2026-06-06');
  look('S6', { queenSeen: 'virgin', emergedCells: 2 });
  on('2026-06-07');
  look('H11', {
    eggs: false,
    queenSeen: 'not-seen',
    note: 'Quiet on the comb, cells polished, nothing in them. Cold and wet since the 20th of May.',
  });
  look('H12', { cappedCells: 2, emergedCells: 1 });
  summerRound('High Fallow');
  on('2026-06-08');
  correct(grafted, { accepted: 9 });
  on('2026-06-11');
  summerRound('Sallow Bank', {
    seen: { S19: { gentle: 4 } },
    notes: { S19: 'Gentle with a thunderstorm coming up.' },
  });
  note(
    'S5, S32 and S8 stay shut: they hatch or fly this week. H11 on Saturday: eggs by then, or it gets a frame of them.',
    { yard: 'Sallow Bank' },
  );
}
