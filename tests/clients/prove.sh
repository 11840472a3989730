#!/usr/bin/env bash
# prove.sh GENERATOR URL: makes a client of api/openapi.json with kiota or nswag, compiles it (a warning is an error) and lets it make
# three calls to the service that runs at URL; or, with typescript, compiles the package of clients/typescript and lets it make every
# call. Needs the .NET SDK and node.
set -euo pipefail
cd "$(dirname "$0")"
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 KIOTA_TUTORIAL_ENABLED=false
generator=$1
url=$2
contract=../../api/openapi.json

# A name with a number behind it is a schema that stands twice.
no_numbered_names() {
  ! grep -rnE '(class|enum|interface) [A-Za-z]+[0-9]+\b' "$1/generated" || { echo "numbered names in the client of $1"; exit 1; }
}

build_and_call() {
  no_numbered_names "$1"
  dotnet build "$1" --nologo -v quiet
  dotnet run --no-build --project "$1" "$url"
}

case $generator in
  kiota)
    dotnet tool restore >/dev/null
    rm -rf kiota/generated
    # No code for compatibility with clients of earlier generators.
    dotnet kiota generate --language CSharp --openapi "$contract" --class-name SetupClient --namespace-name SetupService.Clients.Kiota \
      --output kiota/generated --exclude-backward-compatible --log-level Error
    build_and_call kiota
    ;;
  nswag)
    dotnet tool restore >/dev/null
    rm -rf nswag/generated
    dotnet nswag openapi2csclient /input:"$contract" /output:nswag/generated/SetupClient.cs /namespace:SetupService.Clients.NSwag \
      /className:SetupClient /jsonLibrary:SystemTextJson /jsonLibraryVersion:10.0 /jsonPolymorphicSerializationStyle:SystemTextJson \
      /jsonConverters:System.Text.Json.Serialization.JsonStringEnumConverter /generateNullableReferenceTypes:true \
      /generateOptionalPropertiesAsNullable:true >/dev/null
    build_and_call nswag
    ;;
  typescript)
    cd ../../clients/typescript
    npm ci --ignore-scripts --no-audit --no-fund --silent
    npm run --silent build
    npm run --silent try -- "$url"
    ;;
  *)
    echo "unknown generator: $generator"
    exit 2
    ;;
esac
