; The installer: for one user, without an administrator. Made by packaging/package windows, which says VERSION, PLACE (what
; is installed), OUT (the installer) and FILES (a list, made from PLACE, of what is put there and taken away again).
Target amd64-unicode
SetCompressor /SOLID lzma
Name "Wardchalk ${VERSION}"
OutFile "${OUT}"
RequestExecutionLevel user
InstallDir "$LOCALAPPDATA\Programs\Wardchalk"
InstallDirRegKey HKCU "Software\Wardchalk" "Folder"
Icon "${ICONS}\wardchalk.ico"
UninstallIcon "${ICONS}\wardchalk.ico"
VIProductVersion "${VERSION}.0"
VIAddVersionKey "ProductName" "Wardchalk"
VIAddVersionKey "FileDescription" "Installer of Wardchalk"
VIAddVersionKey "FileVersion" "${VERSION}"
VIAddVersionKey "LegalCopyright" "The Wardchalk authors. Apache License 2.0"

!include "MUI2.nsh"
!define MUI_ICON "${ICONS}/wardchalk.ico"
!define MUI_UNICON "${ICONS}/wardchalk.ico"
!define MUI_WELCOMEPAGE_TEXT "Wardchalk checks a child's dose against the reference that you enter, and shows the working.$\r$\n$\r$\nIt ships no dosing data and checks only what was typed in. It is not for parents or patients, and not for resuscitation. It takes the place of neither the order, the pharmacist, local policy, nor an independent second check by another person.$\r$\n$\r$\nIt is installed for you alone; no administrator is needed."
!insertmacro MUI_PAGE_WELCOME
!insertmacro MUI_PAGE_LICENSE "${PLACE}/licences/wardchalk.txt"
!insertmacro MUI_PAGE_DIRECTORY
!insertmacro MUI_PAGE_INSTFILES
!define MUI_FINISHPAGE_RUN "$INSTDIR\wardchalk.exe"
!insertmacro MUI_PAGE_FINISH
!insertmacro MUI_UNPAGE_CONFIRM
!insertmacro MUI_UNPAGE_INSTFILES
!insertmacro MUI_LANGUAGE "English"

!include "${FILES}"
!define UNINSTALL "Software\Microsoft\Windows\CurrentVersion\Uninstall\Wardchalk"

Section
  SetShellVarContext current
  !insertmacro put_files
  WriteUninstaller "$INSTDIR\uninstall.exe"
  CreateShortCut "$SMPROGRAMS\Wardchalk.lnk" "$INSTDIR\wardchalk.exe"

  WriteRegStr HKCU "Software\Wardchalk" "Folder" "$INSTDIR"
  WriteRegStr HKCU "Software\Classes\.wardchalk" "" "Wardchalk.Case"
  WriteRegStr HKCU "Software\Classes\.wardchalk" "Content Type" "application/x-wardchalk-case+json"
  WriteRegStr HKCU "Software\Classes\Wardchalk.Case" "" "Case of Wardchalk"
  WriteRegStr HKCU "Software\Classes\Wardchalk.Case\DefaultIcon" "" "$INSTDIR\wardchalk.exe,1"
  WriteRegStr HKCU "Software\Classes\Wardchalk.Case\shell\open\command" "" '"$INSTDIR\wardchalk.exe" "%1"'

  WriteRegStr HKCU "${UNINSTALL}" "DisplayName" "Wardchalk"
  WriteRegStr HKCU "${UNINSTALL}" "DisplayVersion" "${VERSION}"
  WriteRegStr HKCU "${UNINSTALL}" "Publisher" "The Wardchalk authors"
  WriteRegStr HKCU "${UNINSTALL}" "DisplayIcon" "$INSTDIR\wardchalk.exe"
  WriteRegStr HKCU "${UNINSTALL}" "UninstallString" '"$INSTDIR\uninstall.exe"'
  WriteRegStr HKCU "${UNINSTALL}" "QuietUninstallString" '"$INSTDIR\uninstall.exe" /S'
  WriteRegDWORD HKCU "${UNINSTALL}" "NoModify" 1
  WriteRegDWORD HKCU "${UNINSTALL}" "NoRepair" 1
  System::Call 'shell32::SHChangeNotify(i 0x08000000, i 0, p 0, p 0)' ; the desktop looks again at what opens which file
SectionEnd

; Takes away what it put there and nothing else: cases that somebody kept in the folder stay.
Section Uninstall
  SetShellVarContext current
  !insertmacro take_files
  Delete "$INSTDIR\uninstall.exe"
  Delete "$SMPROGRAMS\Wardchalk.lnk"
  RMDir "$INSTDIR"
  DeleteRegKey HKCU "Software\Classes\Wardchalk.Case"
  ReadRegStr $0 HKCU "Software\Classes\.wardchalk" ""
  StrCmp $0 "Wardchalk.Case" 0 +2
    DeleteRegKey HKCU "Software\Classes\.wardchalk"
  DeleteRegKey HKCU "Software\Wardchalk"
  DeleteRegKey HKCU "${UNINSTALL}"
  System::Call 'shell32::SHChangeNotify(i 0x08000000, i 0, p 0, p 0)'
SectionEnd
