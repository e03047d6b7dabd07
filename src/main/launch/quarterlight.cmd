@echo off
rem Starts Quarterlight from any folder: quarterlight VERB ... (without a verb: the desktop).
rem JAVA_HOME chooses the Java machine, else the first java on the path runs it.
setlocal
for %%I in ("%~dp0..") do set "home=%%~fI"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "heap="
if "%~1"=="intake" set "heap=-Xmx128m"
for %%v in (pages compare sheet new set add clock photos words listen zones rust findings dates gaps suggest help -V --version) do if "%~1"=="%%v" set "heap=-XX:TieredStopAtLevel=1"
"%java%" %heap% -Xlog:disable -Xlog:all=error:stderr -XX:+IgnoreUnrecognizedVMOptions -XX:+UseSerialGC -XX:Tier4InvocationThreshold=50000 -XX:Tier4MinInvocationThreshold=6000 -XX:Tier4CompileThreshold=150000 -XX:Tier4BackEdgeThreshold=400000 -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 %QUARTERLIGHT_JAVA_OPTIONS% -XX:SharedArchiveFile="%home%\classes.jsa" "-Dquarterlight.shared-classes=%home%\classes.jsa" "-Dorg.sqlite.lib.path=%home%\native" -jar "%home%\quarterlight.jar" %*
exit /b %ERRORLEVEL%
