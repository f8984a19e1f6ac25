import { Component, type ComponentChildren } from 'preact';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import { routes } from './routes.ts';

interface BrokenScreenProps {
  /** The address that is open: another one is tried afresh, and so is this one when it is opened again. */
  readonly at: string;
  readonly children: ComponentChildren;
}

interface BrokenScreenState {
  readonly broke?: { readonly error: unknown; readonly at: string } | undefined;
}

/** Stands in for a screen that fell over: what broke, that the records did not, and the ways on. */
export class BrokenScreen extends Component<BrokenScreenProps, BrokenScreenState> {
  static override getDerivedStateFromProps(
    { at }: BrokenScreenProps,
    { broke }: BrokenScreenState,
  ): BrokenScreenState | null {
    return broke && broke.at !== at ? { broke: undefined } : null;
  }

  override componentDidCatch(error: unknown): void {
    this.setState({ broke: { error, at: this.props.at } });
    reportError(error);
  }

  override render() {
    const { broke } = this.state;
    if (!broke) return this.props.children;
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
