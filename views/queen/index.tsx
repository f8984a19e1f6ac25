/** Stands in until this screen is built. */
export function QueenPage(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Queen</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
