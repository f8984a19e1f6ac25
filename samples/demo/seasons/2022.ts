import { FORMIC, OXALIC, oldQueen, part, raises, type Telling, THYMOL } from '../telling/index.ts';

/** A second yard, a swarm from nobody knows where, and the first swarm lost. */
export function season2022(tell: Telling): void {
  spring(tell);
  splits(tell);
  highSummer(tell);
  towardsWinter(tell);
}

function spring(tell: Telling): void {
  const { openYard, note, winterWalk, springRound, drones, wash, on, move } = tell;
  on('2022-04-03');
  winterWalk('Sallow Bank', { 'Nuc 3': 'starved' });
  note(
    'Nuc 3 starved two combs away from its stores. Linden herself is gone; Aspen carries her on, in the box Linden.',
  );
  on('2022-04-29');
  springRound('Sallow Bank', { notes: { Linden: 'Weak, but a fine round brood nest.' } });
  openYard('High Fallow', {
    where: 'Clearing above the forest road, nobody else within two kilometres',
    roundOrder: 2,
  });
  on('2022-05-07');
  move(['Nuc 1', 'Nuc 2'], 'High Fallow');
  drones('Sallow Bank', { ownShare: 0.25, background: 'valley bees', backgroundKinship: 0.02 });
  drones('High Fallow', { ownShare: 0.5, background: 'forest bees', backgroundKinship: 0.04 });
  on('2022-05-13');
  wash('Sallow Bank');
  on('2022-05-14');
  wash('High Fallow', 'sugar-shake');
}

function splits(tell: Telling): void {
  const { startColony, founder, note, summerRound, on, split, splitOff, look, lose, cellsGiven } = tell;
  const { cellsFound } = tell;
  on('2022-05-28');
  splitOff('Hazel', 'Nuc 4', raises('Flint'), { eggs: 1, emergingBrood: 1, stores: 1, shakenBees: 2 });
  splitOff('Sorrel', 'Nuc 5', raises('Chert'));
  split(
    'Sorrel',
    [part('Sorrel', oldQueen), part('Nuc 0', raises('Agate'), { eggs: 1, openBrood: 1, stores: 1 })],
    'A small one, to be sold.',
  );
  on('2022-05-29');
  splitOff('Nuc 1', 'Fallow 3', raises('Slate'), { eggs: 1, openBrood: 1, stores: 1, shakenBees: 1 });
  splitOff('Nuc 2', 'Fallow 4', raises('[first virgin of Fallow 4]'), {
    eggs: 1,
    emergingBrood: 1,
    stores: 1,
  });
  on('2022-06-03');
  startColony('Eaves', 'Sallow Bank', {
    how: 'swarm-taken',
    from: 'Under the eaves of the chapel in the village',
    size: 0.6,
    box: 'ten-frame box',
    remark: 'Nobody within sight keeps bees. Dark, small, and they run on the comb.',
  });
  founder('Vagrant', 'Eaves', { marked: false, remark: 'Laying when she came; age and descent not known.' });
  on('2022-06-05');
  look('Sorrel', { openCells: 6, cappedCells: 0, note: 'Broke the cells. It will not hold them.' });
  on('2022-06-09');
  look('Sorrel', { queenSeen: 'not-seen', eggs: false, cappedCells: 4, swarmTendency: 1 });
  lose('Sorrel', 'swarmed', 'Gone over the river by noon on the 8th, the neighbour says.');
  cellsFound('Sorrel', 'Gneiss', 'swarm', 'Sorrel', 'Left two capped cells.');
  on('2022-06-11');
  look('Linden', {
    cappedCells: 3,
    eggs: true,
    note: 'Three cells in the middle of the comb: they want another queen.',
  });
  cellsFound('Linden', 'Tuff', 'supersedure', 'Aspen');
  split('Hazel', [
    part('Hazel', oldQueen),
    part('Nuc 6', { how: 'none' }, { emergingBrood: 1, stores: 1, shakenBees: 2 }),
  ]);
  cellsGiven('Nuc 6', {
    queen: 'Opal',
    dam: 'Aspen',
    from: 'Linden',
    age: 'capped',
    cells: 1,
    remark: 'One of the three cells from Linden, cut out.',
  });
  on('2022-06-18');
  summerRound('Sallow Bank', {
    skip: ['Linden'],
    notes: { Hazel: 'Not one cell, and the box full to the lid.' },
  });
  on('2022-06-19');
  summerRound('High Fallow');
  splitOff('Nuc 2', 'Fallow 5', raises('Jasper'));
  splitOff('Nuc 1', 'Fallow 6', raises('Beryl'));
  note('A marten has been at the lids. Stones on all of them.', { yard: 'High Fallow' });
}

function highSummer(tell: Telling): void {
  const { summerRound, on, look, confirm, lose, markAndName, eggsGiven, endColony } = tell;
  on('2022-06-27');
  look('Nuc 4', { eggs: true, queenSeen: 'seen-unmarked' });
  confirm('Flint');
  confirm('Chert');
  confirm('Agate');
  on('2022-06-30');
  confirm('Slate');
  look('Fallow 4', { eggs: false, emergedCells: 1, tornCells: 2, queenSeen: 'not-seen' });
  on('2022-07-09');
  confirm('Gneiss', 'worker-brood');
  confirm('Opal');
  markAndName('Flint', { mark: '4' });
  markAndName('Chert', { mark: '5' });
  on('2022-07-10');
  look('Fallow 4', { eggs: false, queenSeen: 'not-seen', note: 'Six weeks. Quiet, no eggs, dwindling.' });
  lose('[first virgin of Fallow 4]', 'failed-to-mate', 'Perhaps the swallows.');
  eggsGiven('Fallow 4', {
    queen: 'Onyx',
    from: 'Nuc 1',
    orFrom: 'Nuc 2',
    remark: 'Two frames of eggs in one carrying box and no mark on either: from Nuc 1 or from Nuc 2.',
  });
  markAndName('Slate', { mark: '7' });
  on('2022-07-14');
  look('Linden', { eggs: true, queenSeen: 'seen-unmarked' });
  confirm('Tuff', 'queen-laying');
  on('2022-07-17');
  confirm('Jasper');
  confirm('Beryl');
  on('2022-07-23');
  summerRound('Sallow Bank', { notes: { Eaves: 'They follow me to the door.' } });
  markAndName('Gneiss');
  markAndName('Opal', { unmarked: true });
  markAndName('Tuff', { unmarked: true });
  markAndName('Agate');
  endColony('Nuc 0', 'sold', 'Agate went over the hill with her five frames.');
  on('2022-07-24');
  summerRound('High Fallow');
  markAndName('Jasper');
  markAndName('Beryl');
}

function towardsWinter(tell: Telling): void {
  const { autumnRound, wash, on, confirm, markAndName, harvest, treat, treatmentOut, feed, drop } = tell;
  const { pinTest, join, endColony } = tell;
  on('2022-07-25');
  pinTest('Sallow Bank', 10);
  on('2022-07-30');
  wash('Sallow Bank');
  on('2022-07-31');
  wash('High Fallow');
  pinTest('High Fallow', 10);
  on('2022-08-06');
  harvest('Sallow Bank', { kilograms: 12 });
  on('2022-08-07');
  harvest('High Fallow', { kilograms: 8 });
  on('2022-08-15');
  const strips = treat('Sallow Bank', { ...THYMOL });
  on('2022-08-16');
  confirm('Onyx', 'worker-brood');
  markAndName('Onyx', { unmarked: true });
  join('Fallow 4', 'Fallow 3', 'Too small to winter, and I do not know whose daughter Onyx is. Pinched her.');
  endColony('Fallow 6', 'sold', 'Beryl and her nucleus went to a beginner down the valley.');
  treat('High Fallow', {
    ...FORMIC,
    end: '2022-08-30',
  });
  feed(['Fallow 3', 'Fallow 5'], 'syrup', 5);
  on('2022-09-17');
  wash('Sallow Bank');
  treatmentOut(strips);
  feed(['Nuc 4', 'Nuc 5', 'Nuc 6', 'Eaves'], 'syrup', 6);
  on('2022-09-25');
  autumnRound('Sallow Bank', {
    notes: { Linden: 'Still thinking of brood when they should think of winter.' },
  });
  on('2022-09-27');
  autumnRound('High Fallow');
  on('2022-10-30');
  drop(['Hazel', 'Sorrel', 'Eaves', 'Linden'], 5);
  on('2022-12-03');
  treat('Sallow Bank', { ...OXALIC, end: '2022-12-06' });
  on('2022-12-04');
  treat('High Fallow', { ...OXALIC, end: '2022-12-07' });
}
