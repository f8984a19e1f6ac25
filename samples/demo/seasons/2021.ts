import { FORMIC, OXALIC, oldQueen, part, raises, type Telling } from '../telling/index.ts';

/** The first season on paper: what stands there, three boxes to six, and queens and boxes that share their names. */
export function season2021(tell: Telling): void {
  beginnings(tell);
  increase(tell);
  towardsWinter(tell);
}

function beginnings(tell: Telling): void {
  const { keeperBegins, openYard, startColony, founder, note, winterWalk, springRound, drones } = tell;
  const { wash, on } = tell;
  on('2021-04-18');
  keeperBegins('Wenna Oldfallow');
  openYard('Sallow Bank', { where: 'Behind the house, south of the willows', roundOrder: 1, day: '2018' });
  startColony('Hazel', 'Sallow Bank', {
    how: 'already-here',
    from: 'A cast that moved into an empty box at the forest edge',
    size: 0.95,
    day: '2019',
    box: 'ten-frame box',
  });
  founder('Hazel', 'Hazel', {
    born: '2019',
    background: 'forest bees',
    marked: true,
    day: '2020-05',
    remark: 'Marked late, in her second summer.',
  });
  startColony('Sorrel', 'Sallow Bank', {
    how: 'already-here',
    from: 'Left behind by the keeper before me',
    size: 0.9,
    day: '2020-06',
    box: 'ten-frame box',
  });
  founder('Sorrel', 'Sorrel', { born: '2020', background: 'valley bees', marked: true, day: '2020-06' });
  note('Starting a proper book. The boxes are called after their queens; there are only two, so it will do.');
  winterWalk('Sallow Bank', {});
  on('2021-05-01');
  springRound('Sallow Bank', {
    notes: { Hazel: 'Small cluster in February, and now the strongest. Nothing was fed.' },
  });
  drones('Sallow Bank', { ownShare: 0.2, background: 'valley bees', backgroundKinship: 0.02 });
  on('2021-05-12');
  wash('Sallow Bank');
}

function increase(tell: Telling): void {
  const { on, startColony, founder, split, splitOff, look } = tell;
  const { confirm, markAndName, lose, eggsGiven, summerRound, note } = tell;
  on('2021-05-29');
  startColony('Linden', 'Sallow Bank', {
    how: 'bought',
    from: 'A breeder two valleys south',
    size: 0.8,
    box: 'ten-frame box',
  });
  founder('Linden', 'Linden', {
    born: '2020-07',
    background: 'bought stock',
    from: 'A breeder two valleys south',
    marked: true,
    remark: 'Said to be gentle and to build up early.',
  });
  on('2021-06-02');
  splitOff('Hazel', 'Nuc 1', raises('Rowan'), { eggs: 1, openBrood: 1, stores: 1, shakenBees: 1 });
  splitOff('Sorrel', 'Nuc 2', raises('[first virgin of Nuc 2]'), { eggs: 1, emergingBrood: 1, stores: 1 });
  on('2021-06-11');
  look('Nuc 1', { cappedCells: 4 });
  look('Nuc 2', { cappedCells: 3, openCells: 1 });
  on('2021-06-14');
  summerRound('Sallow Bank', {
    seen: { Linden: { swarmTendency: 2, openCells: 3, cappedCells: 5, queenSeen: 'seen-marked' } },
    notes: { Linden: 'Swarm cells along two bottom bars, only two weeks after she came.' },
  });
  split(
    'Linden',
    [
      part('Nuc 3', oldQueen, { emergingBrood: 2, stores: 1, shakenBees: 1 }),
      part('Linden', raises('Aspen', 'capped-cells')),
    ],
    'Took the old queen out so that they stay. Left two good cells in the box.',
  );
  on('2021-07-03');
  look('Nuc 1', { eggs: true, youngBrood: true, queenSeen: 'not-seen' });
  confirm('Rowan');
  look('Nuc 2', {
    eggs: false,
    queenSeen: 'virgin',
    note: 'Ten wet days in a row when she should have flown.',
  });
  on('2021-07-10');
  look('Nuc 2', { eggs: true, droneBroodOnly: true, severalEggsInCells: false });
  lose('[first virgin of Nuc 2]', 'failed-to-mate', 'Nothing but drone brood. Pinched her.');
  eggsGiven('Nuc 2', {
    queen: 'Alder',
    from: 'Hazel',
    remark: 'The box is from Sorrel; the frame of eggs is from Hazel.',
  });
  on('2021-07-13');
  confirm('Aspen', 'worker-brood');
  markAndName('Rowan');
  on('2021-07-24');
  summerRound('Sallow Bank');
  markAndName('Aspen', { unmarked: true });
  note('The queen Linden lives in Nuc 3 now; the box called Linden has her daughter Aspen.', {
    hive: 'Linden',
  });
}

function towardsWinter(tell: Telling): void {
  const { autumnRound, wash, on, look, confirm, markAndName, harvest, treat, feed, drop, pinTest } = tell;
  on('2021-07-26');
  wash(['Hazel', 'Sorrel', 'Linden', 'Nuc 1', 'Nuc 3']);
  pinTest('Sallow Bank', 10);
  on('2021-08-03');
  harvest('Sallow Bank', { kilograms: 11 });
  on('2021-08-06');
  treat('Sallow Bank', {
    ...FORMIC,
    end: '2021-08-20',
  });
  on('2021-08-10');
  look('Nuc 2', { eggs: true, cappedWorkerBrood: true });
  confirm('Alder', 'worker-brood');
  on('2021-08-28');
  wash(['Hazel', 'Sorrel', 'Linden']);
  feed(['Nuc 1', 'Nuc 2', 'Nuc 3', 'Linden'], 'syrup', 6);
  markAndName('Alder');
  on('2021-09-26');
  autumnRound('Sallow Bank', {
    seen: { 'Nuc 3': { framesOfBees: 4 } },
    notes: { 'Nuc 3': 'Four frames and no more; she laid too little in August.' },
  });
  on('2021-11-06');
  drop(['Hazel', 'Sorrel', 'Linden'], 4);
  on('2021-12-04');
  treat('Sallow Bank', { ...OXALIC, end: '2021-12-07' });
}
