@echo off
rem Starts Fairlead on Windows: with the Java beside it, else with JAVA_HOME, else with the one on the path.
setlocal EnableExtensions DisableDelayedExpansion
set "here=%~dp0"
set "java="
if exist "%here%runtime\bin\java.exe" set "java=%here%runtime\bin\java.exe"
if not defined java if defined JAVA_HOME set "java=%JAVA_HOME:"=%\bin\java.exe"
if not defined java for %%j in (java.exe) do set "java=%%~$PATH:j"
rem a program that is not there would end with 3, which says that a case cannot be read
if not defined java (
    echo No Java was found: install one, 17 or later, or name its folder in JAVA_HOME. 1>&2
    exit /b 1
)
if not exist "%java%" (
    echo There is no "%java%": JAVA_HOME names another folder than that of a Java. 1>&2
    exit /b 1
)
if not exist "%here%lib" (
    echo The folder lib is missing beside fairlead.jar: unpack or build both together. 1>&2
    exit /b 1
)
rem by kind of command, as in the launcher of other systems, which says why
set "flags=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=5 -Dsun.reflect.inflationThreshold=100000"
if "%~1"=="serve" set "flags="
for %%c in (audit compare cohort) do if "%~1"=="%%c" set "flags=-XX:+UseParallelGC -Xmn192m -XX:FreqInlineSize=40"
rem what is printed is UTF-8; the console's own page of characters comes back afterwards
set "page="
for /f "tokens=2 delims=:." %%p in ('chcp 2^>nul') do set "page=%%p"
if defined page chcp 65001 >nul 2>nul
"%java%" %flags% -jar "%here%fairlead.jar" %*
set "code=%ERRORLEVEL%"
if defined page chcp %page% >nul 2>nul
exit /b %code%
