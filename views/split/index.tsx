/** Stands in until this screen is built. */
export function SplitPage(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Split</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
