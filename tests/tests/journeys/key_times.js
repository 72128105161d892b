async (path, texts) => {
  const field = document.getElementById(path);
  for (let it = field.closest('details'); it; it = it.parentElement.closest('details')) it.open = true;
  field.scrollIntoView({ block: 'center' });
  field.focus();
  const rest = (ms) => new Promise((done) => setTimeout(done, ms));
  const soon = () => new Promise((done) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = done;
    channel.port2.postMessage(0);
  });
  await rest(1500);
  const times = [];
  for (const text of texts) {
    await new Promise(requestAnimationFrame);
    await rest(0);
    const start = performance.now();
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await soon();
    const worked = performance.now() - start;
    await new Promise(requestAnimationFrame);
    await soon();
    times.push([worked, performance.now() - start]);
    await rest(1500);
  }
  const median = (at) => times.map((it) => it[at]).sort((a, b) => a - b)[times.length >> 1].toFixed(1);
  return `worked in ${median(0)} ms, painted in ${median(1)} ms`;
}
