// Shows each photo when it scrolls near, as many shops do.
const watcher = new IntersectionObserver((entries) => {
  for (const { isIntersecting, target } of entries) {
    if (!isIntersecting) continue;
    target.src = target.dataset.src;
    watcher.unobserve(target);
  }
});
for (const image of document.querySelectorAll('img.lazy')) watcher.observe(image);
