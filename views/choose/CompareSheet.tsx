export function CompareSheet(_: unknown) {
  return <p>later</p>;
}
