import { above, FORMIC, OXALIC, type Telling, THYMOL } from '../telling/index.ts';

/** What came of the splits of 2025, and what went into the winter. */
export function summer2025(tell: Telling): void {
  earlyJuly(tell);
  july(tell);
  august(tell);
  towardsWinter(tell);
}

function earlyJuly(tell: Telling): void {
  const { summerRound, on, look, confirm, lose, markAndName, eggsGiven, pinTest, join, penTo } = tell;
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
  pinTest('Marl Pit', 10);
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

function july(tell: Telling): void {
  const { summerRound, on, look, confirm, lose, markAndName, pinTest, join } = tell;
  on('2025-07-12');
  for (const name of ['Clover', 'Campion', 'Lovage', 'Burnet']) confirm(name);
  look('S26', { eggs: false, queenSeen: 'not-seen', emergedCells: 1 });
  lose('[first virgin of S26]', 'not-found');
  join('S26', 'S25');
  on('2025-07-19');
  summerRound('Sallow Bank', { notes: { S7: 'Veil up, gloves on, and still stung through the sleeve.' } });
  for (const name of ['Clover', 'Campion', 'Lovage', 'Burnet', 'Comfrey']) markAndName(name);
  pinTest('Sallow Bank', 10);
  on('2025-07-20');
  summerRound('High Fallow');
  markAndName('Madder', { mark: '46' });
  pinTest('High Fallow', 10);
}

function august(tell: Telling): void {
  const { note, wash, on, confirm, markAndName, harvest, treat, treatmentOut, feed, join } = tell;
  const { endColony } = tell;
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
    ...THYMOL,
    remark: 'Those above two in a hundred.',
  });
  endColony('S24', 'sold', 'Comfrey, to a beginner.');
  endColony('S27', 'sold', 'Lovage, to a beginner.');
  endColony('S28', 'sold', 'Burnet, to the school garden.');
  on('2025-08-10');
  treat(above(countsAbove, 2), {
    ...FORMIC,
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

function towardsWinter(tell: Telling): void {
  const { autumnRound, wash, on, treat, drop, penTo } = tell;
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
  treat('Sallow Bank', { ...OXALIC, end: '2025-12-09' });
}
