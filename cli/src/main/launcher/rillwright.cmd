@echo off
rem Starts Rillwright in one Java machine. The jar lies beside this file and, where the build made
rem one, an archive of its classes, which is used where it is as long as the build wrote down and
rem what the Java machine finds in it adds up.
setlocal EnableExtensions DisableDelayedExpansion
set "here=%~dp0"
rem From the path only: a bare "java" would be looked for in the current folder first.
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined JAVA_HOME set "java=%JAVA_HOME:"=%\bin\java.exe"
if defined java if exist "%java%" goto start
echo rillwright: no Java found; install Java 17 or later, or set JAVA_HOME>&2
exit /b 127

:start
set "archive="
set "length="
set "sealed="
set "shared="
for %%a in ("%here%rillwright-*.jsa") do (
  set "archive=%%~fa"
  set "length=%%~za"
)
if defined archive if exist "%archive%.seal" for /f "usebackq" %%l in ("%archive%.seal") do set "sealed=%%l"
if defined sealed if "%sealed%"=="%length%" set shared=-XX:SharedArchiveFile="%archive%" -XX:+VerifySharedSpaces
rem The last line, so that its status is the status of the whole.
"%java%" -XX:+IgnoreUnrecognizedVMOptions -Xshare:auto -Xlog:disable -XX:+DisplayVMOutputToStderr %shared% -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Drillwright.parent=0 -jar "%here%rillwright.jar" %*
