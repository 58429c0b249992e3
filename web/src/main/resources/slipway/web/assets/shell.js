// What every page does: forms that keep what was typed, and a warning before idle sign-off.
const idle = document.querySelector('[data-idle-minutes]');
if (idle) {
  const minutes = Number(idle.dataset.idleMinutes);
  let last = Date.now();
  const seen = () => { last = Date.now(); idle.hidden = true; };
  ['pointerdown', 'keydown'].forEach((kind) => addEventListener(kind, seen, { passive: true }));
  setInterval(() => {
    const left = minutes * 60 - (Date.now() - last) / 1000;
    if (left < 0) location.reload();
    else if (left < 60) idle.hidden = false;
  }, 5000);
}

// The first mistake gets the focus, so that it is read out and seen.
document.querySelector('.mistakes')?.focus();

// "I asked each of these: the rest is no" fills what is not answered in its group.
document.querySelectorAll('[data-rest]').forEach((button) => {
  button.hidden = false;
  button.addEventListener('click', () => {
    const group = button.closest('[data-group]');
    group.querySelectorAll('fieldset').forEach((question) => {
      if (!question.querySelector('input:checked')) {
        question.querySelector(`input[value="${button.dataset.rest}"]`).checked = true;
      }
    });
    button.dispatchEvent(new Event('change', { bubbles: true }));
  });
});
