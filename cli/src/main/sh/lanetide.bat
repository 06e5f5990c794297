@echo off
rem Starts the program that lies beside this file, with whatever words it is given.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
rem What ends at once is not worth a second compiler or other collectors; they change no answer.
set "flags="
for %%c in (check generate-completion help lines new pattern rotate schema) do if "%~1"=="%%c" set "flags=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
"%java%" %flags% -jar "%~dp0lanetide.jar" %*
if errorlevel 9009 echo lanetide: There is no java on the path; install JDK 17 or newer, or set JAVA_HOME. 1>&2
exit /b %errorlevel%
