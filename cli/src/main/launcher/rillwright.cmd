@echo off
rem Starts Rillwright in one Java machine. The jar lies beside this file and, where the build made
rem one, an archive of its classes, which is used where what the Java machine finds in it adds up.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "quick=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
set "shared="
for %%a in ("%here%rillwright-*.jsa") do call :archive "%%~fa" "%%~za"
"%java%" -XX:+IgnoreUnrecognizedVMOptions -Xshare:auto -Xlog:disable -XX:+DisplayVMOutputToStderr %shared% %quick% -Drillwright.parent=0 -jar "%here%rillwright.jar" %*
exit /b %errorlevel%

:archive
if not exist "%~1.seal" exit /b
for /f "usebackq" %%l in ("%~1.seal") do if "%%l"=="%~2" set shared=-XX:SharedArchiveFile="%~1" -XX:+VerifySharedSpaces
exit /b
