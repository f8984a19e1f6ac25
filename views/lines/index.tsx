import type { QueenId } from '../../src/journal/ids.ts';
import { go, routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { Breadth } from './Breadth.tsx';
import { Chosen } from './Chosen.tsx';
import { Controls } from './Controls.tsx';
import { Drawing } from './Drawing.tsx';
import { Legend } from './Legend.tsx';
import { LineList } from './LineList.tsx';
import styles from './Lines.module.css';
import { linesLead } from './line-words.ts';
import { Outline } from './Outline.tsx';
import { Related } from './Related.tsx';
import { aliveFirst } from './summaries.ts';
import { type LinesChoice, type LinesFacts, useLinesChoice, useLinesFacts, useLook } from './use-lines.ts';

/** So many queens are found by eye. */
const AT_A_GLANCE = 16;

/** The lines: which are alive and on how many queens each hangs, who crossed which winters, how two are related. */
export function Lines(_props: { readonly id?: string }) {
  const facts = useLinesFacts();
  const choice = useLinesChoice();
  const { lives, lines, left, order, winters, filter } = facts;
  const registry = useRegistry();
  const { on } = useStore();
  const look = useLook(facts, choice);
  if (lives.length === 0) return <NoLines />;
  const listed = aliveFirst(lines);
  const find = (queen: QueenId) => {
    // One whom the filter hides is drawn again.
    if (!left.lives.some(({ id }) => id === queen)) filter.value = { living: false };
    choice.choose(queen);
  };
  return (
    <>
      <PageHeader title="Lines" lead={linesLead(lines)} />
      <div class={styles.page}>
        <div class={styles.side}>
          <LineList
            lines={listed}
            chosen={filter.value.line}
            onChoose={(line) => {
              filter.value = { ...filter.value, line };
            }}
          />
          <Breadth />
          <ChosenPanel facts={facts} choice={choice} />
        </div>
        <div class={styles.drawing}>
          <Controls
            filter={filter}
            yards={[...registry.yards.values()]}
            onFind={lives.length > AT_A_GLANCE ? find : undefined}
          />
          <Drawing
            lives={left.lives}
            lines={order}
            on={on.value}
            winters={winters}
            look={look}
            onChoose={choice.choose}
            onOpen={(queen) => go(routes.queen(queen))}
          />
          <Legend />
        </div>
      </div>
      <Outline lives={left.lives} lines={listed.filter(({ line }) => order.includes(line))} />
    </>
  );
}

function NoLines() {
  return (
    <>
      <PageHeader title="Lines" />
      <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
        Here stand the queens as lines through time: who descends from whom, which winters each crossed, and
        on how many living queens a line hangs. It begins with the first queen you enter at a colony.
      </EmptyState>
    </>
  );
}

interface ChosenPanelProps {
  readonly facts: LinesFacts;
  readonly choice: LinesChoice;
}

/** The chosen queen, and beside her the one she is compared with. Read out as the choice moves. */
function ChosenPanel({ facts, choice }: ChosenPanelProps) {
  const { byId, lines } = facts;
  const life = choice.chosen && byId.get(choice.chosen);
  const other = choice.other.value;
  return (
    <div class={life ? styles.panel : styles.nobody} aria-live="polite">
      {life && !other && (
        <Chosen
          life={life}
          line={lines.find(({ line }) => line === life.line)}
          shown={choice.shown}
          onShow={choice.show}
          drones={choice.met}
          dronesShown={choice.dronesShown.value}
          onDrones={(shown) => {
            choice.dronesShown.value = shown;
          }}
          comparing={choice.comparing.value}
          onCompare={(comparing) => {
            choice.comparing.value = comparing;
          }}
          onClose={() => choice.choose(undefined)}
        />
      )}
      {life && other && (
        <Related
          first={life.id}
          second={other}
          titleOf={(queen) => byId.get(queen)?.title ?? 'a queen not in these records'}
          onClose={() => {
            choice.other.value = undefined;
          }}
        />
      )}
    </div>
  );
}
