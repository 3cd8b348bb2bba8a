#include "ui/shell/dialogs.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPushButton>

#include "ui/shell/file_dialogs.h"
#include "ui/theme/plain_message.h"

namespace wardchalk::ui {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("Dialogs", text); }

}  // namespace

bool DesktopDialogs::choosePrinter(QWidget* parent, QPrinter& printer) {
  keepFoldersUnwritten();  // it asks for the name of a file to print to
  return QPrintDialog(&printer, parent).exec() == QDialog::Accepted;
}

QStringList DesktopDialogs::files(QWidget* parent, const FileQuestion& question) {
  return askForFiles(parent, question);
}

Unsaved DesktopDialogs::unsaved(QWidget* parent, const QString& question) {
  PlainMessage box(QMessageBox::Question, tr("Entries are not saved"), question, parent);
  const auto* save = box.addButton(tr("&Save first"), QMessageBox::AcceptRole);
  const auto* discard = box.addButton(tr("&Empty the form"), QMessageBox::DestructiveRole);
  QPushButton* keep = box.addButton(tr("&Keep the entries"), QMessageBox::RejectRole);
  box.setDefaultButton(keep);
  box.setEscapeButton(keep);
  box.exec();
  if (box.clickedButton() == save) return Unsaved::save;
  return box.clickedButton() == discard ? Unsaved::discard : Unsaved::keep;
}

Overwrite DesktopDialogs::overwrite(QWidget* parent, const QString& question, bool theirs) {
  PlainMessage box(QMessageBox::Warning, tr("Save the case"), question, parent);
  const auto* mine =
      box.addButton(theirs ? tr("&Keep mine") : tr("&Write it here"), QMessageBox::DestructiveRole);
  const auto* open = theirs ? box.addButton(tr("&Open theirs"), QMessageBox::AcceptRole) : nullptr;
  QPushButton* elsewhere = box.addButton(tr("Save under &another name …"), QMessageBox::AcceptRole);
  QPushButton* stop = box.addButton(tr("&Do not save"), QMessageBox::RejectRole);
  box.setDefaultButton(elsewhere);
  box.setEscapeButton(stop);
  box.exec();
  if (box.clickedButton() == mine) return Overwrite::keepMine;
  if (open && box.clickedButton() == open) return Overwrite::openTheirs;
  return box.clickedButton() == elsewhere ? Overwrite::saveElsewhere : Overwrite::stop;
}

bool DesktopDialogs::goesOn(QWidget* parent, const GoOnQuestion& question) {
  PlainMessage box(QMessageBox::Question, question.title, question.text, parent);
  QPushButton* careful = box.addButton(question.careful, QMessageBox::RejectRole);
  const auto* goOn = box.addButton(question.goOn, QMessageBox::DestructiveRole);
  box.setDefaultButton(careful);
  box.setEscapeButton(careful);
  box.exec();
  return box.clickedButton() == goOn;
}

void DesktopDialogs::tell(QWidget* parent, const QString& title, const QString& text) {
  PlainMessage box(QMessageBox::NoIcon, title, text, parent);
  box.setStandardButtons(QMessageBox::Close);
  box.exec();
}

}  // namespace wardchalk::ui
