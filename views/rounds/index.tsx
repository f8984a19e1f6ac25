/** Stands in until this screen is built. */
export function Rounds(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Rounds</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
