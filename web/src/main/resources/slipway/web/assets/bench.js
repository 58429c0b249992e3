// The bench answers while a joint is moved: one question at a time, always the latest, with fewer draws until it rests.
import { playMotions } from './motion.js';

const form = document.getElementById('bench');
const REST_MS = 220;
const USUAL = { tract: 'sciatic-tibial', side: 'right', stature: '170', unit: 'cm' };
const positions = JSON.parse(form.dataset.positions);
const dark = matchMedia('(prefers-color-scheme: dark)');

document.documentElement.classList.add('scripted');
document.querySelectorAll('.script-on').forEach((element) => { element.hidden = false; });

// ---- The fields

const field = (name) => form.elements.namedItem(name);
const slider = (name) => form.querySelector(`[data-slider="${name}"]`);
const sets = [...form.querySelectorAll('.joint-set')];
const angles = (set) => [...set.querySelectorAll('[data-low]')];
const number = (text) => (text.trim() === '' ? NaN : Number(text.trim().replace(',', '.').replace('\u2212', '-')));

function shownSet() {
  const on = field('on');
  return on ? on.value : 'a';
}

function showSet() {
  sets.forEach((set) => { set.hidden = set.dataset.set !== shownSet(); });
}

function setAngle(name, degrees) {
  const input = field(name);
  const rounded = Math.round(degrees * 10) / 10;
  input.value = String(Object.is(rounded, -0) ? 0 : rounded);
  input.removeAttribute('aria-invalid');
  slider(name).value = input.value;
}

function base(set) {
  return positions[field(`${set.dataset.prefix}position`).value];
}

function toPosition(set) {
  const given = base(set);
  angles(set).forEach((input) => setAngle(input.name, given[input.name.slice(set.dataset.prefix.length)] ?? 0));
}

/** The question as an address: only what differs from the usual; nothing that was never asked. */
function question() {
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
  for (const name of ['tract', 'site', 'side', 'view', 'stature', 'unit']) {
    const { value } = field(name);
    if (value !== '' && value !== USUAL[name]) asked.set(name, value);
  }
  return asked;
}

// ---- Question and answer

let busy = false;
let waiting = null;
let resting = 0;
let dragged = null;

function changed(restNow = false) {
  clearTimeout(resting);
  resting = setTimeout(() => ask(false), restNow ? 0 : REST_MS);
  if (!restNow) ask(true);
}

async function ask(moving) {
  if (busy) {
    waiting = { moving };
    return;
  }
  busy = true;
  const asked = question();
  const shared = asked.toString();
  asked.set('ground', dark.matches ? 'dark' : 'light');
  asked.set('width', String(stripWidth()));
  if (moving) {
    asked.set('draws', 'few');
    if (dragged) asked.set('drag', dragged.joint);
  }
  try {
    const response = await fetch(`/bench/answer?${asked}`, { headers: { Accept: 'text/html' } });
    if (response.redirected) location.reload();
    put(await response.text());
    if (!moving && response.ok) history.replaceState(null, '', `/bench?${shared}`);
  } catch {
    tell(form.dataset.offline);
  }
  busy = false;
  if (dragged) dragged.follow();
  if (waiting) {
    const next = waiting;
    waiting = null;
    ask(next.moving);
  }
}

function stripWidth() {
  const strip = document.querySelector('[data-part^=strip-]');
  return Math.max(300, Math.min(1400, Math.round(strip.clientWidth / 20) * 20));
}

function tell(sentence) {
  const box = document.querySelector('[data-part=mistakes]');
  const line = document.createElement('p');
  line.className = 'mistake';
  line.textContent = sentence;
  box.replaceChildren(line);
}

/** Puts each part of an answer in the place of the old one. */
function put(html) {
  const answer = new DOMParser().parseFromString(html, 'text/html');
  const parts = [...answer.querySelectorAll('[data-part]')];
  if (parts.length === 0) {
    // Only mistakes came back: the last answer stays, and what is wrong is said.
    const box = document.querySelector('[data-part=mistakes]');
    box.replaceChildren(...answer.body.children);
    return;
  }
  for (const part of parts) {
    const old = document.querySelector(`[data-part="${part.dataset.part}"]`);
    part.querySelectorAll('details[data-keep]').forEach((details) => {
      details.open = old.querySelector(`details[data-keep="${details.dataset.keep}"]`)?.open ?? false;
    });
    // Something that listens must stay in place, or nothing is read out.
    if (part.dataset.part === 'summary' || part.dataset.part === 'mistakes') old.replaceChildren(...part.childNodes);
    else old.replaceWith(part);
  }
  stages.forEach((stage) => stage.update());
}

// ---- Taking hold of the figure

const SVG = 'http://www.w3.org/2000/svg';
const MOST_STEP_DEG = 25;
const NEAR_DEG = 0.5;
const HANDLE_PX = 13;

class Stage {
  constructor(element) {
    this.element = element;
    this.set = sets.find((set) => set.dataset.set === element.dataset.stage);
    this.overlay = document.createElementNS(SVG, 'svg');
    this.overlay.setAttribute('class', 'handles');
    this.overlay.setAttribute('aria-hidden', 'true');
    element.append(this.overlay);
    this.circles = new Map();
    this.handles = new Map();
    this.update();
  }

  update() {
    const part = this.element.querySelector('[data-frame]');
    const frame = part.dataset.frame;
    if (this.overlay.getAttribute('viewBox') !== frame) this.overlay.setAttribute('viewBox', frame);
    const fresh = new Map(JSON.parse(part.dataset.handles).map((handle) => [handle.joint, handle]));
    // While one is dragged only that one is measured; the others are hidden until it rests.
    this.handles = fresh;
    for (const [joint, circle] of this.circles) {
      if (!fresh.has(joint)) {
        circle.remove();
        this.circles.delete(joint);
      }
    }
    const scale = this.overlay.getScreenCTM()?.a || 1;
    for (const [joint, handle] of fresh) {
      let circle = this.circles.get(joint);
      if (!circle) {
        circle = document.createElementNS(SVG, 'circle');
        circle.setAttribute('data-joint', joint);
        if (joint.startsWith('other-')) circle.setAttribute('class', 'far');
        circle.addEventListener('pointerdown', (event) => this.take(event, joint, circle));
        this.circles.set(joint, circle);
        this.overlay.append(circle);
      }
      circle.setAttribute('cx', handle.x.toFixed(1));
      circle.setAttribute('cy', handle.y.toFixed(1));
      circle.setAttribute('r', (HANDLE_PX / scale).toFixed(1));
      circle.setAttribute('stroke-width', (2.5 / scale).toFixed(1));
    }
  }

  point(event) {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.overlay.getScreenCTM().inverse());
    return { x: at.x, y: at.y };
  }

  take(event, joint, circle) {
    event.preventDefault();
    const on = field('on');
    if (on && on.value !== this.element.dataset.stage) {
      on.value = this.element.dataset.stage;
      showSet();
    }
    const name = this.set.dataset.prefix + joint;
    const start = this.point(event);
    const handle = this.handles.get(joint);
    // The hand rarely hits the middle: the distance stays as it was.
    const off = { x: handle.x - start.x, y: handle.y - start.y };
    let target = null;
    circle.setPointerCapture(event.pointerId);
    circle.classList.add('held');
    const stage = this;
    dragged = {
      joint,
      follow() {
        const now = stage.handles.get(joint);
        if (!target || !now) return;
        const way = now.xPerDeg ** 2 + now.yPerDeg ** 2;
        const step = ((target.x - now.x) * now.xPerDeg + (target.y - now.y) * now.yPerDeg) / way;
        const from = number(field(name).value);
        const { low, high } = field(name).dataset;
        const limited = Math.max(-MOST_STEP_DEG, Math.min(MOST_STEP_DEG, step));
        const to = Math.max(Number(low), Math.min(Number(high), from + limited));
        if (Math.abs(to - from) < NEAR_DEG) return;
        setAngle(name, Math.round(to));
        changed();
      },
    };
    const move = (moved) => {
      const at = this.point(moved);
      target = { x: at.x + off.x, y: at.y + off.y };
      if (!busy) dragged?.follow();
    };
    const drop = () => {
      circle.classList.remove('held');
      circle.removeEventListener('pointermove', move);
      dragged = null;
      changed(true);
    };
    circle.addEventListener('pointermove', move);
    circle.addEventListener('pointerup', drop, { once: true });
    circle.addEventListener('pointercancel', drop, { once: true });
  }
}

const stages = [...form.querySelectorAll('[data-stage]')].map((element) => new Stage(element));

// ---- What is changed

form.addEventListener('submit', (event) => {
  event.preventDefault();
  const reset = event.submitter?.name === 'reset' ? event.submitter.value : '';
  if (reset) toPosition(sets.find((set) => set.dataset.set === reset));
  changed(true);
});

form.addEventListener('input', (event) => {
  const { target } = event;
  if (target.dataset.slider) {
    field(target.dataset.slider).value = target.value;
    changed();
  } else if (target.dataset.low !== undefined) {
    const degrees = number(target.value);
    const fits = degrees >= Number(target.dataset.low) && degrees <= Number(target.dataset.high);
    target.setAttribute('aria-invalid', String(!fits));
    target.closest('.joint').classList.toggle('wrong', !fits);
    if (fits) {
      slider(target.name).value = String(degrees);
      changed();
    } else {
      // Half typed or wrong: the server says what is wrong once the typing rests.
      clearTimeout(resting);
      resting = setTimeout(() => ask(false), 3 * REST_MS);
    }
  } else if (target.name === 'stature') {
    clearTimeout(resting);
    resting = setTimeout(() => ask(false), 3 * REST_MS);
  }
});

form.addEventListener('change', (event) => {
  const { target } = event;
  if (target.name === 'on') showSet();
  else if (target.name === 'compare') compare(target.checked);
  else if (target.name.endsWith('position')) {
    toPosition(target.closest('.joint-set'));
    changed(true);
  } else if (target.name === 'unit') {
    const stature = field('stature');
    const value = number(stature.value) * (target.value === 'in' ? 1 / 2.54 : 2.54);
    if (Number.isFinite(value)) stature.value = String(Math.round(value * 10) / 10);
    changed(true);
  } else if (target.name === 'tract') {
    // Other places lie on another pathway.
    location.assign(`/bench?${question()}`);
  } else if (['site', 'side', 'view'].includes(target.name)) changed(true);
});

/** The second posture begins as a copy of the first. */
function compare(on) {
  const asked = question();
  if (on) {
    for (const [name, value] of [...asked]) {
      if (name === 'position' || field(`${name}`)?.dataset?.low !== undefined) asked.set(`b-${name}`, value);
    }
    asked.set('compare', 'b');
  } else {
    [...asked.keys()].filter((name) => name.startsWith('b-')).forEach((name) => asked.delete(name));
    asked.delete('compare');
  }
  location.assign(`/bench?${asked}`);
}

// ---- Motion

document.getElementById('motion-form').addEventListener('submit', async (event) => {
  event.preventDefault();
  await showMotion();
});
document.getElementById('exercise').addEventListener('change', showMotion);

async function showMotion() {
  const id = document.getElementById('exercise').value;
  const place = document.querySelector('[data-part=motion]');
  if (!id) {
    place.replaceChildren();
    return;
  }
  const asked = question();
  asked.set('exercise', id);
  asked.set('ground', dark.matches ? 'dark' : 'light');
  asked.set('width', String(Math.max(360, Math.min(720, place.clientWidth))));
  const response = await fetch(`/bench/motion?${asked}`);
  if (response.redirected) location.reload();
  const answer = new DOMParser().parseFromString(await response.text(), 'text/html');
  place.replaceChildren(...answer.body.children);
  playMotions(place);
}

playMotions(document);
showSet();
dark.addEventListener('change', () => ask(false));
addEventListener('resize', () => stages.forEach((stage) => stage.update()));
if (Math.abs(stripWidth() - 760) > 120) ask(false);
