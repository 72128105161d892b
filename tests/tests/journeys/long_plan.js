(boxes, cables) => {
  const key = 'ledgerboard.draft.rough-in';
  const draft = JSON.parse(localStorage.getItem(key));
  const label = (at) => (at ? `B${at}` : 'PANEL');
  const placed = (at) => ({
    label: label(at), what: at ? 'receptacle' : 'panel', high: `${16 + (at % 3) * 14}`,
    x: `${(at * 37) % 480}`, y: `${(at * 91) % 360}`, marked: '22.5',
  });
  const run = (at) => {
    const to = (at % (boxes - 1)) + 1;
    const from = to % 10 === 1 ? 0 : to - 1;
    const coiled = at >= boxes - 1;
    const rest = coiled ? { length: '100' } : { load: '1' };
    return {
      from: label(coiled ? to : from), to: coiled ? '' : label(to),
      cable: to % 20 < 10 ? '12-2' : '14-2', circuit: `${Math.floor((to - 1) / 10) + 1}`,
      holes: `H${to >> 2}, H${(to >> 2) + 1}`, ...rest,
    };
  };
  const some = (count, make) => Array.from({ length: count }, (_, at) => make(at));
  Object.assign(draft.input, {
    high: '96', bit: '1', boxes: some(boxes, placed), cables: some(cables, run),
    holes: some(50, (at) => ({ label: `H${at}` })),
  });
  localStorage.setItem(key, JSON.stringify(draft));
  return true;
}
