# Both base images are build arguments without a default: name the .NET 10 SDK image and the ASP.NET Core 10 runtime image
# of the registry or mirror that you trust. They must set APP_UID to a user without rights, as the official ones do.
ARG SDK_IMAGE
ARG RUNTIME_IMAGE

FROM ${SDK_IMAGE} AS build
WORKDIR /source
# Packages first: they change less often than the code, so their layer stays.
COPY global.json Directory.Build.props Directory.Packages.props BannedSymbols.txt .editorconfig ./
COPY src/Advice/Advice.csproj src/Advice/
COPY src/Advice.Rules/Advice.Rules.csproj src/Advice.Rules/
COPY src/AdviceService/AdviceService.csproj src/AdviceService/
RUN dotnet restore src/AdviceService --use-current-runtime
COPY src/ src/
COPY rules/ rules/
# Compiled for this machine beforehand, so that a start costs little.
RUN dotnet publish src/AdviceService --no-restore --configuration Release --use-current-runtime --self-contained false \
    --output /app -p:UseAppHost=false

FROM ${RUNTIME_IMAGE}
WORKDIR /app
COPY --from=build /app ./
# The base image's port setting is emptied, because --urls below is the only one; without diagnostics the runtime writes
# no files, so that the root may be read-only.
ENV ASPNETCORE_HTTP_PORTS= \
    DOTNET_EnableDiagnostics=0
USER $APP_UID
EXPOSE 8080
STOPSIGNAL SIGTERM
# Rules of your own: mount a folder and set ADVICE_OVERLAYS to it.
# In the entry point, so that options added to it (--rules …) do not take the address away.
ENTRYPOINT ["dotnet", "AdviceService.dll", "serve", "--urls", "http://0.0.0.0:8080"]
