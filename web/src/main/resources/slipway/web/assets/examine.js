// The examination by keyboard, and the chart of symptoms. Without this script the lists alone do the same.
const form = document.querySelector('[data-exam]');
const blocks = [...form.querySelectorAll('[data-block]')];
const seen = (cell) => !cell.closest('details:not([open])') && cell.offsetParent !== null;
const cells = (block, side) => [...block.querySelectorAll(`select[data-side="${side}"]`)].filter(seen);
const open = () => blocks.filter((block) => block.open && block.offsetParent !== null);
const changed = (cell) => cell.dispatchEvent(new Event('input', { bubbles: true }));

// What the last filling filled, so that it can be taken back.
let last = [];
const status = form.querySelector('[data-status]');
const say = (text, undo) => {
  status.querySelector('span').textContent = text;
  status.querySelector('[data-undo]').hidden = !undo;
};
const fill = (block, side) => {
  last = cells(block, side).filter((cell) => cell.value === '');
  last.forEach((cell) => { cell.value = block.dataset.normal; changed(cell); });
  say(form.dataset.filled.replace('{0}', last.length), last.length > 0);
};
const undo = () => {
  if (!last.length) return;
  last.forEach((cell) => { cell.value = ''; changed(cell); });
  last[0].focus();
  last = [];
  say(form.dataset.undone, false);
};
form.querySelector('[data-undo]').addEventListener('click', undo);

const goTo = (cell) => {
  if (!cell) { form.querySelector('.bar button').focus(); return; }
  cell.focus();
  cell.scrollIntoView({ block: 'nearest' });
};
const nextBlock = (block) => {
  const list = open();
  const next = list[list.indexOf(block) + 1];
  goTo(next && (cells(next, 'right')[0] ?? cells(next, 'left')[0]));
};
const afterFill = (block, side) => {
  const other = cells(block, side === 'right' ? 'left' : 'right').find((cell) => cell.value === '');
  if (other) goTo(other); else nextBlock(block);
};
const step = (block, cell, by) => {
  const column = cells(block, cell.dataset.side);
  const next = column[column.indexOf(cell) + by];
  if (next) goTo(next); else if (by > 0) afterFill(block, cell.dataset.side);
};
form.addEventListener('keydown', (event) => {
  if (event.key === 'Enter' && event.ctrlKey) {
    event.preventDefault();
    form.requestSubmit(form.querySelector('.bar button.main'));
    return;
  }
  const cell = event.target.closest('select[data-side]');
  if (!cell || event.altKey || event.metaKey) return;
  const block = cell.closest('[data-block]');
  const keys = {
    '.': () => { fill(block, cell.dataset.side); afterFill(block, cell.dataset.side); },
    ',': () => nextBlock(block),
    Enter: () => step(block, cell, event.shiftKey ? -1 : 1),
    Delete: () => { cell.value = ''; changed(cell); },
    Backspace: () => { cell.value = ''; changed(cell); },
  };
  const act = event.ctrlKey ? (event.key === 'z' ? undo : null) : keys[event.key];
  if (act) { event.preventDefault(); act(); }
});
form.querySelectorAll('.fill, .keys').forEach((part) => { part.hidden = false; });
form.querySelectorAll('[data-fill]').forEach((button) => button.addEventListener('click', () => {
  fill(button.closest('[data-block]'), button.dataset.fill);
}));

// The chart and the list are one record: pressing an area turns its list on, the list paints the area.
const chart = form.querySelector('.chart');
const signs = Object.fromEntries(chart.dataset.signs.split(' ').map((pair) => pair.split(':')));
const paint = (area) => {
  const list = document.getElementById(area.dataset.for);
  const state = list ? list.value : '';
  area.setAttribute('class', `area ${state in signs ? state : ''}`);
  area.querySelector('text').textContent = signs[state] ?? '';
};
const areas = [...chart.querySelectorAll('.area')];
areas.forEach((area) => area.addEventListener('click', () => {
  const list = document.getElementById(area.dataset.for);
  const order = ['pain', 'tingling', 'numb', 'weakness', 'none', ''];
  list.value = order[(order.indexOf(list.value) + 1) % order.length];
  changed(list);
}));
form.addEventListener('input', (event) => {
  areas.filter((area) => area.dataset.for === event.target.id).forEach(paint);
  const row = event.target.closest('tr');
  if (row) row.classList.toggle('recorded', [...row.querySelectorAll('select, input')].some((each) => each.value !== ''));
});
areas.forEach(paint);

// Whoever has a keyboard starts in the first cell; a page that shows mistakes starts there instead.
if (!document.querySelector('.mistakes') && !location.hash && matchMedia('(hover: hover) and (pointer: fine)').matches) {
  cells(open()[0], 'right')[0]?.focus({ preventScroll: true });
}
