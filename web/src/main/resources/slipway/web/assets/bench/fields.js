// The fields of the bench: joints of one or two postures, and the question that they make.
export const form = document.getElementById('bench');

const USUAL = { tract: 'sciatic-tibial', side: 'right', stature: '170', unit: 'cm' };
const positions = JSON.parse(form.dataset.positions);

export const field = (name) => form.elements.namedItem(name);
export const slider = (name) => form.querySelector(`[data-slider="${name}"]`);
export const sets = [...form.querySelectorAll('.joint-set')];
const angles = (set) => [...set.querySelectorAll('[data-low]')];
export const number = (text) => (text.trim() === '' ? NaN : Number(text.trim().replace(',', '.').replace('\u2212', '-')));

function shownSet() {
  const on = field('on');
  return on ? on.value : 'a';
}

export function showSet() {
  sets.forEach((set) => { set.hidden = set.dataset.set !== shownSet(); });
}

export function setAngle(name, degrees) {
  const input = field(name);
  const rounded = Math.round(degrees * 10) / 10;
  input.value = String(Object.is(rounded, -0) ? 0 : rounded);
  input.removeAttribute('aria-invalid');
  slider(name).value = input.value;
}

function base(set) {
  return positions[field(`${set.dataset.prefix}position`).value];
}

export function toPosition(set) {
  const given = base(set);
  angles(set).forEach((input) => setAngle(input.name, given[input.name.slice(set.dataset.prefix.length)] ?? 0));
}

/** The question as an address: only what differs from the usual; nothing that was never asked. */
export function question() {
  const asked = new URLSearchParams();
  for (const set of sets) {
    const prefix = set.dataset.prefix;
    asked.set(`${prefix}position`, field(`${prefix}position`).value);
    const given = base(set);
    for (const input of angles(set)) {
      const usual = given[input.name.slice(prefix.length)] ?? 0;
      if (number(input.value) !== usual && input.value.trim() !== '') asked.set(input.name, input.value.trim());
    }
  }
  if (sets.length > 1) asked.set('compare', 'b');
  for (const name of ['tract', 'site', 'side', 'view', 'stature', 'unit', 'episode']) {
    const value = field(name)?.value ?? '';
    if (value !== '' && value !== USUAL[name]) asked.set(name, value);
  }
  return asked;
}
