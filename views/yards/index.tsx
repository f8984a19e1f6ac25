/** Stands in until this screen is built. */
export function Yards(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Yards</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
