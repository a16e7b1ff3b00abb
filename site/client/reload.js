// While `serve` runs: loads the page anew when the record has changed.
;(() => {
  const changes = new EventSource('/-/changes')
  changes.addEventListener('message', () => location.reload())
})()
