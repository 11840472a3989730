#!/usr/bin/env bash
# Prints what the wear diagnosis is held to: told against true on thousands of cars of both simulators, the published vignettes, and the whole stories.
# Minutes on two cores; some lines end with exit code 1 where a target is missed. Usage: tests/wear-figures.sh [Calibration|Vignette|Story]
set -u -o pipefail
cd "$(dirname "$0")/.."
export SETUP_SERVICE_LONG_TESTS=1
failed=0

figures() {
  echo "== $3"
  dotnet test "$1" --nologo --filter "$2" --logger 'console;verbosity=detailed' | grep -v -e '^\[xUnit' -e '^ *at ' -e 'Stack Trace' -e '^A total' || failed=1
}

only=${1:-}
case $only in '' | Calibration)
  figures tests/SetupService.Domain.Tests 'FullyQualifiedName~Wear.Diagnosis.CalibrationTests' 'the first simulator'
  figures tests/SetupService.Domain.Tests 'FullyQualifiedName~SecondCalibrationTests.Of_thousands' 'the second simulator'
  ;;
esac
case $only in '' | Vignette) figures tests/SetupService.Domain.Tests 'FullyQualifiedName~Wear.Diagnosis.VignetteTests' 'published vignettes' ;; esac
case $only in '' | Story) figures tests/SetupService.Api.Tests 'FullyQualifiedName~StoryTests.What_comes_first' 'whole stories' ;; esac
exit $failed
