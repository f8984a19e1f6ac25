/** Stands in until this screen is built. */
export function Choose(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Choose</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
