// Shows at once, without network, what an emergency sign asks for; and asks for the usual pain only where there is pain.
const emergency = document.querySelector('[name=emergency]');
const shown = document.querySelector('[data-emergency]');
emergency?.addEventListener('change', () => { shown.hidden = !emergency.checked; });

const none = document.querySelector('[name=none]');
const signs = document.querySelectorAll('[name=emergency], [name=weak], [name=numb]');
none?.addEventListener('change', () => {
  if (none.checked) signs.forEach((sign) => { sign.checked = false; });
  if (shown) shown.hidden = true;
});
signs.forEach((sign) => sign.addEventListener('change', () => { if (sign.checked) none.checked = false; }));

const usual = document.querySelector('[data-usual]');
if (usual) {
  const ask = () => { usual.hidden = document.querySelector('[name=kind]:checked')?.value !== 'pain'; };
  document.querySelectorAll('[name=kind]').forEach((kind) => kind.addEventListener('change', ask));
  ask();
}
document.querySelector('.mistakes')?.focus();
