import { above, FORMIC, OXALIC, type Telling } from '../telling/index.ts';

/** What came of the splits of 2024; Slate goes to Pell, and her place is filled. */
export function summer2024(tell: Telling): void {
  confirmations(tell);
  slateIsGivenAway(tell);
  highSummer(tell);
  towardsWinter(tell);
}

function confirmations(tell: Telling): void {
  const { on, look, confirm, lose, markAndName, eggsGiven, cellsFound } = tell;
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
  const { keeperBegins, openYard, startColony, note, on, markAndName, join, penTo, giveAway } = tell;
  const { putInto } = tell;
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

function highSummer(tell: Telling): void {
  const { note, summerRound, wash, on, confirm, markAndName, harvest, treat, pinTest, endColony } = tell;
  const { washMisread } = tell;
  on('2024-07-13');
  summerRound('Sallow Bank', { skip: ['S2'] });
  markAndName('Lode', { mark: '31' });
  on('2024-07-14');
  summerRound('High Fallow');
  on('2024-07-20');
  confirm('Fosse', 'worker-brood');
  pinTest('Sallow Bank', 10);
  on('2024-07-21');
  pinTest('High Fallow', 10);
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
    ...FORMIC,
    end: '2024-08-24',
  });
  endColony('S15', 'sold', 'Burn, to a beginner.');
  endColony('S10', 'sold', 'Shoal, to the same.');
  on('2024-08-11');
  treat(above(counts, 2), {
    ...FORMIC,
    end: '2024-08-25',
    remark: 'Up here only those above two in a hundred.',
  });
  on('2024-08-17');
  confirm('Tarn', 'queen-laying');
  markAndName('Tarn', { mark: '33' });
  note('Hazel and Tarn on two sides of one comb, both laying. Six summers, then.', { hive: 'S2' });
}

function towardsWinter(tell: Telling): void {
  const { autumnRound, wash, on, markAndName, treat, feed, drop, penTo } = tell;
  on('2024-09-14');
  wash('Sallow Bank');
  feed(['S8', 'S9', 'S11', 'S14', 'S16', 'S18'], 'syrup', 7);
  markAndName('Fosse');
  on('2024-09-15');
  wash('High Fallow');
  on('2024-09-28');
  autumnRound('Sallow Bank', {
    seen: { S2: { queenSeen: 'seen-marked' }, S11: { framesOfBees: 4 } },
    notes: { S2: 'Only Tarn to be seen now.', S11: 'Four frames. Too late a start.' },
  });
  on('2024-09-29');
  autumnRound('High Fallow');
  on('2024-10-05');
  penTo('Pell Brackwater');
  autumnRound('Marl Pit', {
    seen: { P1: { framesOfBees: 9, queenSeen: 'seen-marked' } },
    notes: { P1: 'Nine frames, and not a mark of the summer on them.' },
  });
  penTo('Wenna Oldfallow');
  on('2024-11-02');
  drop(['S1', 'S3', 'S4', 'S5', 'S7'], 5);
  on('2024-12-01');
  treat('Sallow Bank', { ...OXALIC, end: '2024-12-04' });
  on('2024-12-02');
  treat('High Fallow', { ...OXALIC, end: '2024-12-05' });
}
