// Question and answer: the latest question counts, and the parts of an answer take the place of the old ones.
import { form, question } from './fields.js';

export const dark = matchMedia('(prefers-color-scheme: dark)');

const REST_MS = 220;

let busy = false;
let waiting = null;
let resting = 0;

/** What the hand holds: a joint, and how it follows once an answer is there. */
export const held = { now: null };

/** Called when parts of the page were replaced. */
export const replaced = [];

export const idle = () => !busy;

/** Asks at once with fewer draws, and with all of them when nothing changes for a moment. */
export function changed(restNow = false) {
  clearTimeout(resting);
  resting = setTimeout(() => ask(false), restNow ? 0 : REST_MS);
  if (!restNow) ask(true);
}

/** One question at a time; of those that come meanwhile only the last one counts. */
export async function ask(moving) {
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
    if (held.now) asked.set('drag', held.now.joint);
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
  held.now?.follow();
  if (waiting) {
    const next = waiting;
    waiting = null;
    ask(next.moving);
  }
}

/** Width for pictures that fill the page's column, px. */
export function stripWidth() {
  const strip = document.querySelector('[data-part^=strip-]');
  return Math.max(300, Math.min(1400, Math.round(strip.clientWidth / 20) * 20));
}

/** Asks once typing rests: the server says what is wrong with it. */
export function later() {
  clearTimeout(resting);
  resting = setTimeout(() => ask(false), 3 * REST_MS);
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
  // The load ruler comes with the answer that rests; the one before belongs to another posture.
  if (!parts.some((part) => part.dataset.part === 'ruler')) document.querySelector('[data-part=ruler]')?.classList.add('stale');
  replaced.forEach((told) => told());
}
