// Plays the movement of an exercise with a line on the chart of its load. Where motion is unwanted nothing moves.
const SVG = 'http://www.w3.org/2000/svg';
// Places of the chart's axis in its own picture, as the chart is drawn.
const LEFT = 56;
const RIGHT = 16;

export function playMotions(root) {
  root.querySelectorAll('.motion').forEach(play);
}

function drawing(box) {
  const svg = box.querySelector('svg');
  const elements = svg.querySelectorAll('*');
  const tracks = JSON.parse(box.dataset.tracks).map((track) => ({
    spots: track.at.map(([i, name]) => [elements[i], name]),
    values: track.v.map((text) => text.match(/[a-zA-Z]|-?\d+(\.\d+)?/g)),
  }));
  return (share) => {
    for (const { spots, values } of tracks) {
      const u = share * (values.length - 1);
      const i = Math.min(Math.floor(u), values.length - 2);
      const t = u - i;
      const text = values[i].map((from, n) => (Number.isNaN(Number(from)) ? from : from * (1 - t) + values[i + 1][n] * t)).join(' ');
      for (const [element, name] of spots) element.setAttribute(name, text);
    }
  };
}

function play(motion) {
  const boxes = [...motion.querySelectorAll('[data-tracks]')];
  const seconds = Number(motion.dataset.seconds);
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  if (still || seconds === 0 || boxes.some((box) => box.dataset.tracks === '')) return;
  motion.querySelectorAll('.motion-live').forEach((part) => { part.hidden = false; });
  motion.querySelector('.motion-stills').hidden = true;

  const draw = boxes.map(drawing);
  const moments = JSON.parse(motion.dataset.moments);
  const button = motion.querySelector('.motion-play');
  const time = motion.querySelector('#motion-time');
  const now = motion.querySelector('.motion-now');
  const cursors = [...motion.querySelectorAll('.motion-chart svg')].map(cursor);
  let at = 0;
  let last = 0;
  let running = false;

  function show() {
    const share = Math.min(1, at / seconds);
    draw.forEach((each) => each(share));
    cursors.forEach((each) => each(share));
    const m = moments[Math.round(share * (moments.length - 1))];
    now.textContent = motion.dataset.now.replace(/\{(\d)\}/g, (_, i) => (Number(i) === 0 ? at.toFixed(1) : m[Number(i)].toFixed(1)).replace('-', '\u2212'));
    time.value = String(at);
  }

  function frame(stamp) {
    if (!running || !motion.isConnected) return;
    at = (at + ((stamp - last) / 1000) * Number(motion.querySelector('#motion-speed').value)) % seconds;
    last = stamp;
    show();
    requestAnimationFrame(frame);
  }

  function run(on) {
    running = on;
    button.textContent = on ? button.dataset.pause : button.dataset.play;
    if (on) requestAnimationFrame((stamp) => { last = stamp; frame(stamp); });
  }

  button.addEventListener('click', () => run(!running));
  time.addEventListener('input', () => {
    run(false);
    at = Number(time.value);
    show();
  });
  show();
}

/** A line over the chart; an own picture with the same frame, so that the chart's ids stay alone. */
function cursor(chart) {
  const [, , width, height] = chart.getAttribute('viewBox').split(' ').map(Number);
  const over = document.createElementNS(SVG, 'svg');
  over.setAttribute('class', 'cursor');
  over.setAttribute('viewBox', `0 0 ${width} ${height}`);
  over.setAttribute('aria-hidden', 'true');
  const line = document.createElementNS(SVG, 'line');
  line.setAttribute('y1', '40');
  line.setAttribute('y2', String(height - 46));
  over.append(line);
  chart.parentElement.append(over);
  return (share) => {
    const x = LEFT + share * (width - LEFT - RIGHT);
    line.setAttribute('x1', x.toFixed(1));
    line.setAttribute('x2', x.toFixed(1));
  };
}
