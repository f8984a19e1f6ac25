import { Component, type ComponentChildren } from 'preact';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import { routes } from './routes.ts';

interface BrokenScreenProps {
  /** The address that is open: another one is tried afresh. */
  readonly at: string;
  readonly children: ComponentChildren;
}

/** Stands in for a screen that fell over: what broke, that the records did not, and the ways on. */
export class BrokenScreen extends Component<BrokenScreenProps, { broke?: { error: unknown; at: string } }> {
  override componentDidCatch(error: unknown): void {
    this.setState({ broke: { error, at: this.props.at } });
    reportError(error);
  }

  override render() {
    const { at, children } = this.props;
    const { broke } = this.state;
    if (broke?.at !== at) return children;
    const { error } = broke;
    return (
      <Notice tone="warn" title="This page broke. Your records are untouched.">
        <p>Reload it; what you had tapped is taken up again. If it breaks once more, go on from the yards.</p>
        <p>{error instanceof Error ? error.message : String(error)}</p>
        <Button look="main" onPress={() => window.location.reload()}>
          Reload
        </Button>{' '}
        <Button href={routes.yards()}>To the yards</Button>
      </Notice>
    );
  }
}
