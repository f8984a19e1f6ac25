/** Stands in until this screen is built. */
export function WinterWalk(_props: { readonly id?: string }) {
  return (
    <section>
      <h1>Winter outcome</h1>
      <p>This screen is not built yet.</p>
    </section>
  );
}
