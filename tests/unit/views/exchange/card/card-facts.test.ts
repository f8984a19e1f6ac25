import { describe, expect, it } from 'vitest';
import { pedigreeEntries } from '../../../../../src/exchange/pedigree/index.ts';
import { unite } from '../../../../../src/journal/journal.ts';
import { project } from '../../../../../src/registry/project.ts';
import { type CardFacts, cardFacts } from '../../../../../views/exchange/card/card-facts.ts';
import { DEMO_DAY, demoQueen, demoRegistry } from '../../../../helpers/demo.ts';
import { scribe } from '../../../../helpers/devices.ts';
import { family } from '../../../../helpers/family.ts';

const registry = demoRegistry();
const card = (name: string, hideYards = true): CardFacts =>
  cardFacts(registry, demoQueen(name), { on: DEMO_DAY, hideYards });

describe('the pedigree card', () => {
  it('lists the dams up to the founder, each with her winters and how sure she is', () => {
    const { dams, beyond, whole, damsLeftOut } = card('Sable');
    expect(dams.map(({ id }) => registry.queens.get(id)?.name)).toEqual(['Slate', 'Rowan', 'Hazel']);
    expect(dams.map(({ sure }) => sure)).toEqual(['firm', 'firm', 'firm']);
    expect(dams[0]?.winters).toBe('2022/23 to 2024/25');
    expect(beyond).toMatch(/^Hazel is the founder, out of /);
    expect(whole).toBe('All 3 steps of her dam line are firm.');
    expect(damsLeftOut).toBe(0);
  });

  it('says of a queen who was only told of which winters the teller gave her', () => {
    const file = pedigreeEntries(registry, demoQueen('Sable').id, scribe());
    const told = project(unite(new Map(), file).journal);
    const facts = cardFacts(told, told.queens.get(demoQueen('Sable').id)!, { on: DEMO_DAY, hideYards: true });
    expect(facts.winters).toBe('Crossed the winter 2025/26, as told.');
    expect(facts.dams[0]?.winters).toBe('2022/23, 2023/24 and 2024/25');
    expect(facts.dams).toHaveLength(3);
  });

  it('does not say to whom a queen was given', () => {
    const { journal, queens } = family(scribe());
    const relatives = project(journal);
    const given = relatives.queens.get(queens.elder)!;
    expect(given.state).toMatchObject({ is: 'gone', to: 'Jon' });
    const facts = cardFacts(relatives, given, { on: DEMO_DAY, hideYards: true });
    expect(facts.about).toContain('Given away, 1 August 2025.');
    expect(facts.about).not.toContain('Jon');
  });

  it('says of a queen with a probable dam how sure the whole line is', () => {
    const queen = [...registry.queens.values()].find(
      ({ parentage }) =>
        parentage?.dams[0] && parentage.dams[0].probability < 1 && parentage.dams.length === 1,
    );
    const facts = cardFacts(registry, queen!, { on: DEMO_DAY, hideYards: true });
    const share = `${Math.round(100 * queen!.parentage!.dams[0]!.probability)}\u00a0%`;
    expect(facts.dams[0]?.sure).toBe(share);
    expect(facts.whole).toContain('only probable');
  });

  it('tells of no dam of a founder', () => {
    const { dams, beyond, whole } = card('Hazel');
    expect(dams).toEqual([]);
    expect(beyond).toMatch(/^She is the founder, out of /);
    expect(whole).toBe('');
  });

  it('names yards only where they may be told', () => {
    const names = [...registry.yards.values()].map(({ name }) => name);
    const told = (facts: CardFacts) =>
      names.some((name) => JSON.stringify([facts.about, facts.beyond]).includes(name));
    expect(told(card('Sable'))).toBe(false);
    expect(told(card('Sable', false))).toBe(true);
  });

  it('draws her with her dams and daughters, and nobody else', () => {
    const { lives, daughters, queen } = card('Norther');
    expect(daughters.length).toBe(queen.daughters.length);
    expect(lives.map(({ id }) => id)).toEqual([
      demoQueen('Hazel').id,
      queen.id,
      ...daughters.map(({ id }) => id),
    ]);
  });
});
