// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/window/main_window.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <memory>
#include <ostream>

class QLineEdit;

/// Printed in failures.
inline void PrintTo(const QString& text, std::ostream* out)
{
    *out << '"' << text.toStdString() << '"';
}

namespace bothways::app::tests {

/// Fresh preferences, an empty folder, and a clock that stands still until it is moved.
class DesktopTest : public testing::Test {
protected:
    DesktopTest();
    ~DesktopTest() override;

    [[nodiscard]] Clock clock()
    {
        return [this] { return now; };
    }
    [[nodiscard]] QString path(const QString& name) const { return folder.filePath(name); }
    QString write(const QString& name, const QByteArray& bytes) const;
    void passMinutes(int minutes) { now = now.addSecs(60 * minutes); }
    /// Waits until the answer about the study is there.
    static void settle(const StudyDocument& document);

    QTemporaryDir folder;
    Preferences preferences{folder.filePath("preferences.ini")};
    QDateTime now{QDate(2026, 5, 9), QTime(5, 40)};
};

/// The whole window, driven by keys and mouse.
class WindowTest : public DesktopTest {
protected:
    WindowTest();
    ~WindowTest() override;

    template <class Widget = QWidget>
    Widget* find(const char* name) const
    {
        Widget* widget = window->findChild<Widget*>(name);
        EXPECT_NE(widget, nullptr) << "no widget named " << name;
        return widget;
    }
    void click(const char* button) const;
    /// Types into whatever has the keyboard.
    void type(const QString& text) const;
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) const;
    /// What has the keyboard, in the dialog that is open or in the window.
    QWidget* keyboard() const;
    /// Types into a field of the entry panel, in place of what stands there.
    void fill(const char* field, const QString& text) const;
    void trigger(const char* action) const;
    /// One run from the keyboard: consumption and Enter; `minutes` later the next begins.
    void drive(const QString& consumption, int minutes = 7);
    void settle() const { DesktopTest::settle(*window->document()); }
    [[nodiscard]] const core::Study& study() const { return window->document()->study(); }
    [[nodiscard]] QString cell(int row, int column, int role = Qt::DisplayRole) const;
    void choose(int firstRow, int lastRow = -1) const;
    [[nodiscard]] QString message() const;
    /// The run sheet of two blocks, four pairs, as a file.
    [[nodiscard]] QString aSheet() const;
    /// The dialog that is open now; null after a while without one.
    template <class Dialog = QDialog>
    Dialog* openDialog(const char* name) const
    {
        Dialog* dialog = nullptr;
        waitFor([&] {
            dialog = window->findChild<Dialog*>(name);
            return dialog && dialog->isVisible();
        });
        return dialog;
    }
    /// For eyes: what a widget looks like, where BOTHWAYS_PICTURES names a folder.
    static void paint(QWidget& widget, const char* name);
    static bool waitFor(const std::function<bool()>& condition);

    std::unique_ptr<MainWindow> window;
};

} // namespace bothways::app::tests
