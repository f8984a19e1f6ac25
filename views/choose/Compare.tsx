export function Compare(_: unknown) {
  return <p>later</p>;
}
