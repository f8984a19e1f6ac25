/** Stands in until this screen is built. */
export function Lines(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Lines</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
