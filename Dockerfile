# Builds the native service, with its commit, and runs it on the smallest base that has its C library and certificates: no shell, no package manager, a user without rights,
# nothing to be written (run it with a read-only root). The native program wants a processor with the instructions of its build; nothing but the program is in the image.
#   docker build --build-arg COMMIT="$(git rev-parse --short HEAD)" -t setup-service .
ARG SDK=mcr.microsoft.com/dotnet/sdk:10.0-noble
ARG BASE=mcr.microsoft.com/dotnet/runtime-deps:10.0-noble-chiseled

FROM ${SDK} AS build
ARG COMMIT=unknown
RUN apt-get update && apt-get install -y --no-install-recommends clang zlib1g-dev && rm -rf /var/lib/apt/lists/*
WORKDIR /source
COPY Directory.Build.props Directory.Packages.props global.json ./
COPY src src
COPY docs docs
COPY api api
# Symbols stay out: they are three times the program.
RUN dotnet publish src/SetupService.Api -c Release -o /app -p:SourceRevisionId=${COMMIT} -p:CopyOutputSymbolsToPublishDirectory=false

FROM ${BASE}
WORKDIR /app
COPY --from=build /app/SetupService.Api .
COPY LICENSE .
# Beyond the container wants keys, or Access__AllowWithoutKeys=true on purpose: docs/security.md.
ENV urls=http://+:8080
EXPOSE 8080
USER $APP_UID
ENTRYPOINT ["/app/SetupService.Api"]
