/** A reporter for the last line of a run: how many tests passed, failed and were skipped, in one plain line. */
export default class ClosingLine {
  onTestRunEnd(modules) {
    const count = { passed: 0, failed: 0, skipped: 0 }
    for (const module of modules) {
      for (const test of module.children.allTests()) count[test.result().state] += 1
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : ''
    console.log(`\n${count.passed} passed, ${count.failed} failed${skipped}`)
  }
}
