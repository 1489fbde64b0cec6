// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/desktop/support/desktop_fixture.h"

#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

namespace bothways::app::tests {

DesktopTest::DesktopTest()
{
    preferences.setConsumptionUnit(core::ConsumptionUnit::lPer100km);
    preferences.setDistanceUnit(DistanceUnit::km);
    preferences.setTemperatureUnit(TemperatureUnit::celsius);
}

DesktopTest::~DesktopTest() = default;

QString DesktopTest::write(const QString& name, const QByteArray& bytes) const
{
    QFile file(path(name));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    return file.fileName();
}

void DesktopTest::settle(const StudyDocument& document)
{
    EXPECT_TRUE(QTest::qWaitFor([&] { return !document.isBusy(); }, 30'000));
    QCoreApplication::processEvents();
}

WindowTest::WindowTest() : window(std::make_unique<MainWindow>(preferences, clock()))
{
    window->show();
    keyboard();
}

WindowTest::~WindowTest()
{
    window.reset();
    QCoreApplication::processEvents();
}

/// Without a window manager nobody makes a window active again after a dialog.
QWidget* WindowTest::keyboard() const
{
    QWidget* top = window.get();
    for (QDialog* dialog : window->findChildren<QDialog*>())
        if (dialog->isVisible() && dialog->isModal())
            top = dialog;
    if (!top->isActiveWindow()) {
        top->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(top));
    }
    QWidget* focus = QApplication::focusWidget();
    if (!focus || !(focus == top || top->isAncestorOf(focus)))
        focus = top->focusWidget(); // the platform has not told yet that the dialog is in front
    return focus ? focus : top;
}

void WindowTest::click(const char* button) const
{
    auto* widget = find<QAbstractButton>(button);
    ASSERT_NE(widget, nullptr);
    ASSERT_TRUE(widget->isVisible() && widget->isEnabled()) << button;
    QTest::mouseClick(widget, Qt::LeftButton);
}

void WindowTest::type(const QString& text) const
{
    QTest::keyClicks(keyboard(), text);
}

void WindowTest::press(Qt::Key key, Qt::KeyboardModifiers modifiers) const
{
    QTest::keyClick(keyboard(), key, modifiers);
}

void WindowTest::fill(const char* field, const QString& text) const
{
    auto* widget = find<QWidget>(field);
    ASSERT_NE(widget, nullptr);
    keyboard();
    widget->setFocus();
    auto* box = qobject_cast<QComboBox*>(widget);
    auto* edit = box ? box->lineEdit() : qobject_cast<QLineEdit*>(widget);
    ASSERT_NE(edit, nullptr) << field;
    edit->selectAll();
    QTest::keyClicks(widget, text);
}

void WindowTest::paint(QWidget& widget, const char* name)
{
    const QString pictures = qEnvironmentVariable("BOTHWAYS_PICTURES");
    if (!pictures.isEmpty()) {
        EXPECT_TRUE(widget.grab().save(pictures + u'/' + name + ".png"));
    }
}

void WindowTest::trigger(const char* action) const
{
    QAction* found = window->action(action);
    ASSERT_NE(found, nullptr) << action;
    ASSERT_TRUE(found->isEnabled()) << action;
    found->trigger();
}

void WindowTest::drive(const QString& consumption, int minutes)
{
    press(Qt::Key_N, Qt::ControlModifier); // it starts now
    type(consumption);
    press(Qt::Key_Return);
    passMinutes(minutes);
}

QString WindowTest::cell(int row, int column, int role) const
{
    return window->page()->list().model()->index(row, column).data(role).toString();
}

void WindowTest::choose(int firstRow, int lastRow) const
{
    RunListView& list = window->page()->list();
    const auto* model = list.model();
    const int last = lastRow < 0 ? firstRow : lastRow;
    list.setFocus();
    list.selectionModel()->setCurrentIndex(
        model->index(firstRow, 2), QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    list.selectionModel()->select({model->index(firstRow, 0), model->index(last, 0)},
                                  QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
}

QString WindowTest::message() const
{
    const auto* bar = find<QWidget>("messageBar");
    return bar->isVisible() ? find<QLabel>("messageText")->text() : QString();
}

QString WindowTest::aSheet() const
{
    return write("morning.csv", "run,configuration,direction,start,l_per_100km\n"
                                "1,A,out,2026-05-09T05:40,8.41\n"
                                "2,A,return,2026-05-09T05:47,8.29\n"
                                "3,A,out,2026-05-09T05:54,8.44\n"
                                "4,A,return,2026-05-09T06:01,8.30\n"
                                "5,B,out,2026-05-09T06:30,8.05\n"
                                "6,B,return,2026-05-09T06:37,7.99\n"
                                "7,B,out,2026-05-09T06:44,8.10\n"
                                "8,B,return,2026-05-09T06:51,7.96\n");
}

bool WindowTest::waitFor(const std::function<bool()>& condition)
{
    return QTest::qWaitFor(condition, 60'000); // long enough for a busy machine
}

} // namespace bothways::app::tests
