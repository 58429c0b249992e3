// An exercise of the catalogue as a motion on the page.
import { playMotions } from '../motion.js';
import { dark } from './ask.js';
import { question } from './fields.js';

/** Shows what is chosen, for the body and place of the question. */
export async function showMotion() {
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
