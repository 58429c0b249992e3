// Taking hold of the figure: a dragged dot turns its joint until the dot is under the hand.
import { changed, held, idle } from './ask.js';
import { field, number, setAngle, sets, showSet } from './fields.js';

const SVG = 'http://www.w3.org/2000/svg';
const MOST_STEP_DEG = 25;
const NEAR_DEG = 0.5;
const HANDLE_PX = 13;

/** A figure with a dot on each joint that can be moved. */
export class Stage {
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
    held.now = {
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
      if (idle()) held.now?.follow();
    };
    const drop = () => {
      circle.classList.remove('held');
      circle.removeEventListener('pointermove', move);
      held.now = null;
      changed(true);
    };
    circle.addEventListener('pointermove', move);
    circle.addEventListener('pointerup', drop, { once: true });
    circle.addEventListener('pointercancel', drop, { once: true });
  }
}
