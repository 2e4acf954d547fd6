@echo off
rem Starts Stenotherm with the Java machine of this folder; asks nothing of the path. The options spare that machine efforts
rem that do not pay in a run of seconds.
"%~dp0..\java\bin\java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Dstenotherm.program=stenotherm -jar "%~dp0..\lib\stenotherm.jar" %*
