/** Stands in until this screen is built. */
export function Record(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Record</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
