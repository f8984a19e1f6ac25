/** Stands in until this screen is built. */
export function RecordAny(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Any entry</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
