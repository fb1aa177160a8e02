@echo off
rem Starts Fairlead on Windows: with the Java beside it, else with JAVA_HOME, else with the one on the path.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
if exist "%here%runtime\bin\java.exe" set "java=%here%runtime\bin\java"
if not exist "%here%lib" (
    echo The folder lib is missing beside fairlead.jar: unpack or build both together. 1>&2
    exit /b 1
)
set "flags=-XX:+UseSerialGC -XX:TieredStopAtLevel=1"
if /i "%~1"=="serve" set "flags="
if /i "%~1"=="audit" set "flags=-XX:+UseParallelGC"
"%java%" %flags% -jar "%here%fairlead.jar" %*
exit /b %ERRORLEVEL%
