export function DecisionSheet(_: unknown) {
  return <p>later</p>;
}
