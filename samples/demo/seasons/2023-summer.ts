import { above, FORMIC, OXALIC, type Telling } from '../telling/index.ts';

/** What came of the splits of 2023, and the queen nobody knew of. */
export function summer2023(tell: Telling): void {
  july(tell);
  august(tell);
  towardsWinter(tell);
}

function july(tell: Telling): void {
  const { note, summerRound, on, look, confirm, lose, markAndName, pinTest, join } = tell;
  const { silentlySucceeded } = tell;
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
  summerRound('Sallow Bank', {
    seen: { 'Nuc 7': { framesOfBrood: 3, queenSeen: 'seen-marked' } },
    notes: { 'Nuc 7': 'The old lady in her fifth summer, on three frames of brood.' },
  });
  for (const name of ['Zephyr', 'Levanter', 'Draught', 'Flurry']) markAndName(name);
  on('2023-07-16');
  summerRound('High Fallow');
  for (const name of ['Bora', 'Mistral', 'Bise', 'Ostro']) markAndName(name);
  on('2023-07-20');
  silentlySucceeded('Flint', 'Sough');
  on('2023-07-22');
  for (const name of ['Squall', 'Gust']) markAndName(name, { unmarked: true });
  pinTest('Sallow Bank', 10);
  note('Pins read after ten hours, all in one evening.');
  on('2023-07-23');
  pinTest('High Fallow', 10);
  confirm('Haar', 'worker-brood');
}

function august(tell: Telling): void {
  const { wash, on, markAndName, takeBack, harvest, treat, endColony, daughterFound, noteOn, write } = tell;
  const { hive } = tell;
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
    ...FORMIC,
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

function towardsWinter(tell: Telling): void {
  const { autumnRound, wash, on, treat, feed, drop } = tell;
  on('2023-09-16');
  wash(['Hazel', 'Sorrel', 'Nuc 4', 'Eaves', 'Nuc 6']);
  feed(['Nuc 7', 'Nuc 9', 'Nuc 10', 'Nuc 11', 'Eaves east'], 'syrup', 7);
  on('2023-09-17');
  wash(['Nuc 1', 'Fallow 3']);
  feed(['Fallow 7', 'Fallow 9'], 'syrup', 6);
  on('2023-09-30');
  autumnRound('Sallow Bank', {
    seen: { 'Nuc 7': { framesOfBees: 5, queenSeen: 'seen-marked' } },
    notes: { 'Nuc 7': 'Five frames and the old lady. I would not bet on it.' },
  });
  on('2023-10-01');
  autumnRound('High Fallow', { notes: { 'Nuc 1': 'Rowan looks worn.' } });
  on('2023-11-04');
  drop(['Hazel', 'Sorrel', 'Nuc 4', 'Nuc 6', 'Eaves'], 5);
  on('2023-12-02');
  treat('Sallow Bank', { ...OXALIC, end: '2023-12-05' });
  on('2023-12-03');
  treat('High Fallow', { ...OXALIC, end: '2023-12-06' });
}
