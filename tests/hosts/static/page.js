const map = document.querySelector('pulse-map');
const state = document.querySelector('#state');

const show = () => (state.textContent = map.value);
map.addEventListener('input', show);
// A form is reset after its event.
document.querySelector('form').addEventListener('reset', () => setTimeout(show));
document.querySelector('#load').addEventListener('click', () => {
  map.value = '{"format":"pulse-map/1","scale":"0-3","pulses":{"femoral":{"right":{"grade":"reduced"}}}}';
  show();
});
