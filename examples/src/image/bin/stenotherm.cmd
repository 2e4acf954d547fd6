@echo off
rem Starts Stenotherm with the Java machine of this folder; asks nothing of the path. The options spare that machine efforts
rem that do not pay in a run of seconds; the commands that take longer go without the second.
setlocal
set "compilers=-XX:TieredStopAtLevel=1"
if "%~1"=="map" set "compilers="
if "%~1"=="search" set "compilers="
"%~dp0..\java\bin\java" -XX:+UseSerialGC %compilers% -Dstenotherm.program=stenotherm -jar "%~dp0..\lib\stenotherm.jar" %*
