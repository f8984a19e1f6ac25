/** Stands in until this screen is built. */
export function ColonyPage(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Colony</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
