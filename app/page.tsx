export default function Page() {
  return <main>Driftline</main>;
}
