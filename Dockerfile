# Builds the native service, with its commit, and lays it on nothing but what it needs: its C library, OpenSSL, certificates and a user without rights. No shell, no package
# manager, no symbols; nothing is written, so that it runs with a read-only root. The program wants a processor with AVX2 (docs/operations/README.md).
#   docker build --build-arg COMMIT="$(git rev-parse HEAD)" -t setup-service .
# The base is named by its version; name it by digest as SDK=mcr.microsoft.com/dotnet/sdk@sha256:... where builds shall be the same to the byte.
ARG SDK=mcr.microsoft.com/dotnet/sdk:10.0.401-noble

FROM ${SDK} AS build
RUN command -v clang >/dev/null || { apt-get update && apt-get install -y --no-install-recommends clang zlib1g-dev && rm -rf /var/lib/apt/lists/*; }
WORKDIR /source
COPY .editorconfig Directory.Build.props Directory.Packages.props global.json LICENSE ./
COPY src src
COPY docs docs
COPY api api
COPY .ci .ci
ARG COMMIT
RUN test -n "${COMMIT}" || { echo "say which commit is built: --build-arg COMMIT=..."; exit 1; }
# The code is checked elsewhere; here it is compiled.
RUN LockedRestore=true dotnet publish src/SetupService.Api -c Release -o /app -p:SourceRevisionId=${COMMIT} -p:RunAnalyzers=false
RUN .ci/image-root.sh /app/SetupService.Api ${COMMIT} /image

FROM scratch
COPY --from=build /image /
WORKDIR /app
# Beyond the container wants keys, or Access__AllowWithoutKeys=true on purpose: docs/security.md.
# Objects of 16 MiB (hexadecimal) are made before the collector runs: else that goes by the processor's cache, and where a virtual machine does not tell it, the service stops
# 180 times a second, and where it is large, so is the memory.
ENV urls=http://+:8080 SSL_CERT_FILE=/etc/ssl/certs/ca-certificates.crt DOTNET_GCgen0size=1000000
EXPOSE 8080
USER 1654:1654
HEALTHCHECK --interval=10s --timeout=5s --start-period=5s CMD ["/app/SetupService.Api", "health"]
ENTRYPOINT ["/app/SetupService.Api"]
