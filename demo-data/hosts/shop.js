/* What a shop writes on its own page: it hears of each answer and says what the kit will hold. */
document.querySelector('#order').addEventListener('ragbloom-size', ({ detail }) => {
  const { grid, fabrics } = detail.answer;
  const cloth = fabrics.map(({ role, print, buy }) => `${buy.text} ${print ?? role}`).join(', ');
  document.querySelector('#kit').textContent = `${grid.blocks} blocks: ${cloth}`;
});
