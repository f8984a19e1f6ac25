/** Stands in until this screen is built. */
export function Exchange(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Exchange</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
