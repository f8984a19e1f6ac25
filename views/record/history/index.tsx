/** Stands in until this screen is built. */
export function EntryPage(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Entry</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
