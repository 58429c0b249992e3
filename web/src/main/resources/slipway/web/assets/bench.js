// The bench answers while a joint is moved: one question at a time, always the latest, with fewer draws until it rests.
import { playMotions } from './motion.js';
import { ask, changed, dark, later, replaced, stripWidth } from './bench/ask.js';
import { field, form, number, question, sets, showSet, slider, toPosition } from './bench/fields.js';
import { showMotion } from './bench/play.js';
import { Stage } from './bench/stage.js';

document.documentElement.classList.add('scripted');
document.querySelectorAll('.script-on').forEach((element) => { element.hidden = false; });

const stages = [...form.querySelectorAll('[data-stage]')].map((element) => new Stage(element));
const measure = () => stages.forEach((stage) => stage.update());

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
      // Half typed or wrong.
      later();
    }
  } else if (target.name === 'stature') {
    later();
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

document.getElementById('motion-form').addEventListener('submit', async (event) => {
  event.preventDefault();
  await showMotion();
});
document.getElementById('exercise').addEventListener('change', showMotion);

playMotions(document);
showSet();
replaced.push(measure);
dark.addEventListener('change', () => ask(false));
addEventListener('resize', measure);
if (Math.abs(stripWidth() - 760) > 120) ask(false);
