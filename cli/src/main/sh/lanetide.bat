@echo off
rem Starts the program that lies beside this file, with whatever words it is given. The first run of a command leaves an
rem archive of the classes it has loaded in the user's own folder, one for each command, JDK and build of the program;
rem later runs read it and start in a fraction of the time. Nothing hangs on the archive: where it cannot be written, or
rem is of another JDK, the program starts without.
setlocal DisableDelayedExpansion
set "jar=%~dp0lanetide.jar"
set "java=java"
set "jdk="
if not defined JAVA_HOME for %%j in (java.exe) do set "jdk=%%~z$PATH:j-%%~t$PATH:j"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
if defined JAVA_HOME for %%j in ("%JAVA_HOME%\bin\java.exe") do set "jdk=%%~zj-%%~tj"

rem Smaller methods cost the JVM less compiling, and no collector works beside the program, since the cores are busy.
rem What ends at once is not worth a second compiler or other collectors. They change no answer.
set "flags=-XX:FreqInlineSize=100 -XX:+UseParallelGC"
for %%c in (check generate-completion help lines new pattern rotate schema) do if "%~1"=="%%c" set "flags=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"

if not defined LOCALAPPDATA goto plain
set "cache=%LOCALAPPDATA%\lanetide"
if not exist "%cache%\" md "%cache%" 2>nul
if not exist "%cache%\" goto plain

set "command=program"
for %%c in (check compare fairness fit generate-completion help lines merge new pattern preview reoil report rotate schema sheets simulate) do if "%~1"=="%%c" set "command=%%c"
rem A new JDK or a new build is another file, so that no archive is ever out of date. Times are told with signs that no
rem name may hold.
set "build=%jdk%-"
for %%f in ("%jar%") do set "build=%jdk%-%%~zf-%%~tf"
set "build=%build:/=%"
set "build=%build::=%"
set "build=%build: =%"
set "archive=%cache%\%command%-%build%.jsa"

rem What the JVM thinks of an archive it would say among the answer.
set "quiet=-XX:+IgnoreUnrecognizedVMOptions -Xlog:disable"
if not exist "%archive%" goto first
"%java%" %quiet% %flags% "-XX:SharedArchiveFile=%archive%" -jar "%jar%" %*
goto ended

rem Under a name of its own until it is whole: two first runs may meet.
:first
set "made=%archive%.%RANDOM%%RANDOM%"
"%java%" %quiet% %flags% "-XX:ArchiveClassesAtExit=%made%" -jar "%jar%" %*
set "code=%errorlevel%"
if not exist "%made%" goto told
forfiles /p "%cache%" /m *.jsa* /d -30 /c "cmd /c del @path" >nul 2>nul
if %code% geq 0 if %code% leq 1 move /y "%made%" "%archive%" >nul 2>nul
if exist "%made%" del "%made%" 2>nul
goto told

:plain
"%java%" %flags% -jar "%jar%" %*

:ended
set "code=%errorlevel%"
:told
if "%code%"=="9009" echo lanetide: There is no java on the path; install JDK 17 or newer, or set JAVA_HOME. 1>&2
exit /b %code%
