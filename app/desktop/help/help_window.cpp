// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/help_window.h"

#include "app/desktop/help/help_browser.h"

#include <QAction>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolBar>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

constexpr int kTopicRole = Qt::UserRole;

QTreeWidgetItem* itemOf(QTreeWidget& tree, const QString& topic)
{
    for (QTreeWidgetItemIterator it(&tree); *it; ++it)
        if ((*it)->data(0, kTopicRole).toString() == topic)
            return *it;
    return nullptr;
}

} // namespace

HelpWindow::HelpWindow(const QString& language, QWidget* parent)
    : QWidget(parent, Qt::Window), m_handbook(language)
{
    setObjectName("helpWindow");
    setWindowTitle(tr("Handbook – Bothways"));
    setAttribute(Qt::WA_QuitOnClose, false);
    m_browser = new HelpBrowser;
    buildBar();
    m_splitter = new QSplitter;
    m_splitter->addWidget(buildSide());
    m_splitter->addWidget(m_browser);
    m_splitter->setStretchFactor(1, 1);
    m_splitter->setChildrenCollapsible(false);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(0);
    box->addWidget(m_bar);
    box->addWidget(m_splitter, 1);
    fillContents();
    const int letter = fontMetrics().averageCharWidth();
    resize(150 * letter, 44 * fontMetrics().height());
    // The titles whole, where that leaves the page its lines.
    int titles = 38 * letter;
    const int air = m_contents->indentation() + 6 * letter;
    for (int i = 0; i < m_contents->topLevelItemCount(); ++i)
        titles = std::max(
            titles, air + fontMetrics().horizontalAdvance(m_contents->topLevelItem(i)->text(0)));
    titles = std::min(titles, 58 * letter);
    m_splitter->setSizes({titles, 150 * letter - titles});
    connect(m_browser, &HelpBrowser::linkFollowed, this, &HelpWindow::followLink);
    open({"index", {}});
    m_browser->setFocus();
}

HelpWindow::~HelpWindow() = default;

void HelpWindow::addCommand(const char* name, const QString& text, const QList<QKeySequence>& keys,
                            void (HelpWindow::*job)(), const QString& sign)
{
    auto* action = new QAction(text, this);
    if (!sign.isEmpty())
        action->setIconText(sign);
    action->setObjectName(name);
    action->setShortcuts(keys);
    if (!keys.isEmpty())
        action->setToolTip(
            tr("%1 (%2)").arg(text, keys.front().toString(QKeySequence::NativeText)));
    connect(action, &QAction::triggered, this, job);
    QWidget::addAction(action);
    m_bar->addAction(action);
    m_bar->widgetForAction(action)->setAccessibleName(text);
}

void HelpWindow::buildBar()
{
    m_bar = new QToolBar;
    m_bar->setToolButtonStyle(Qt::ToolButtonTextOnly);
    addCommand("helpBack", tr("◀ Back"), {QKeySequence(Qt::ALT | Qt::Key_Left)}, &HelpWindow::back);
    addCommand("helpForward", tr("Forward ▶"), {QKeySequence(Qt::ALT | Qt::Key_Right)},
               &HelpWindow::forward);
    m_bar->addSeparator();
    m_find = new QLineEdit;
    m_find->setObjectName("helpFind");
    m_find->setPlaceholderText(tr("Find in this page (Ctrl+F)"));
    m_find->setAccessibleName(tr("Find in this page"));
    m_find->setClearButtonEnabled(true);
    m_find->setMaximumWidth(34 * fontMetrics().averageCharWidth());
    m_bar->addWidget(m_find);
    addCommand("helpFindBefore", tr("Place before"), {QKeySequence(Qt::SHIFT | Qt::Key_F3)},
               &HelpWindow::findBefore, QString::fromUtf8("▲"));
    addCommand("helpFindNext", tr("Next place"), {QKeySequence(Qt::Key_F3)}, &HelpWindow::findNext,
               QString::fromUtf8("▼"));
    m_found = new QLabel;
    m_found->setObjectName("helpFound");
    m_found->setMargin(6);
    m_bar->addWidget(m_found);
    auto* find = new QAction(this);
    find->setShortcut(QKeySequence::Find);
    connect(find, &QAction::triggered, this, &HelpWindow::startFind);
    QWidget::addAction(find);
    connect(m_find, &QLineEdit::textChanged, this, [this](const QString& text) {
        const int places = m_browser->markAll(text);
        m_found->setText(text.isEmpty() ? QString() : tr("%n place(s)", nullptr, places));
        m_browser->moveCursor(QTextCursor::Start);
        m_browser->findNext(text);
    });
    connect(m_find, &QLineEdit::returnPressed, this, &HelpWindow::findNext);
}

QWidget* HelpWindow::buildSide()
{
    auto* side = new QWidget;
    auto* box = new QVBoxLayout(side);
    box->setContentsMargins(4, 4, 0, 4);
    m_search = new QLineEdit;
    m_search->setObjectName("helpSearch");
    m_search->setPlaceholderText(tr("Search all pages"));
    m_search->setAccessibleName(tr("Search all pages"));
    m_search->setClearButtonEnabled(true);
    m_contents = new QTreeWidget;
    m_contents->setObjectName("helpContents");
    m_contents->setAccessibleName(tr("Contents of the handbook"));
    m_contents->setHeaderHidden(true);
    m_contents->setTextElideMode(Qt::ElideRight);
    m_hits = new QListWidget;
    m_hits->setObjectName("helpHits");
    m_hits->setAccessibleName(tr("Places that were found"));
    m_hits->setWordWrap(true);
    m_hits->setSpacing(3);
    m_hits->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_side = new QStackedWidget;
    m_side->addWidget(m_contents);
    m_side->addWidget(m_hits);
    box->addWidget(m_search);
    box->addWidget(m_side, 1);
    connect(m_search, &QLineEdit::textChanged, this, &HelpWindow::searchAll);
    connect(m_search, &QLineEdit::returnPressed, this, [this] {
        if (m_hits->count() > 0 && m_side->currentWidget() == m_hits) {
            m_hits->setCurrentRow(0);
            m_hits->setFocus();
        }
    });
    connect(m_contents, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (item)
            open(HelpTopic::of(item->data(0, kTopicRole).toString()));
    });
    connect(m_hits, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
        if (!item || !item->data(kTopicRole).isValid())
            return;
        open(HelpTopic::of(item->data(kTopicRole).toString()));
        m_find->setText(m_search->text().simplified().section(u' ', 0, 0));
        m_browser->scrollToSection(m_topic.anchor);
    });
    return side;
}

void HelpWindow::fillContents()
{
    for (const HandbookPage& page : m_handbook.pages()) {
        auto* item = new QTreeWidgetItem(m_contents, {page.title});
        item->setToolTip(0, page.title);
        item->setData(0, kTopicRole, page.name);
        for (const HandbookSection& section : page.sections) {
            if (section.level != 2)
                continue;
            auto* child = new QTreeWidgetItem(item, {section.title});
            child->setToolTip(0, section.title);
            child->setData(0, kTopicRole, HelpTopic{page.name, section.anchor}.text());
        }
    }
}

bool HelpWindow::open(const HelpTopic& topic)
{
    if (!m_handbook.has(topic))
        return false;
    if (topic == m_topic) {
        m_browser->scrollToSection(topic.anchor);
        return true;
    }
    if (!m_topic.page.isEmpty())
        m_before += {m_topic, m_browser->verticalScrollBar()->value()};
    m_after.clear();
    turnTo(topic);
    return true;
}

void HelpWindow::turnTo(const HelpTopic& topic)
{
    const bool samePage = topic.page == m_topic.page;
    m_topic = topic;
    if (!samePage) {
        m_browser->showPage(*m_handbook.page(topic.page));
        m_find->clear();
    }
    m_browser->scrollToSection(topic.anchor);
    follow();
}

void HelpWindow::back()
{
    revisit(m_before, m_after);
}

void HelpWindow::forward()
{
    revisit(m_after, m_before);
}

void HelpWindow::revisit(QList<Visit>& from, QList<Visit>& to)
{
    if (from.isEmpty())
        return;
    to += {m_topic, m_browser->verticalScrollBar()->value()};
    const Visit visit = from.takeLast();
    turnTo(visit.topic);
    m_browser->verticalScrollBar()->setValue(visit.scrolled);
}

/// Buttons and contents, as the page is.
void HelpWindow::follow()
{
    findChild<QAction*>("helpBack")->setEnabled(!m_before.isEmpty());
    findChild<QAction*>("helpForward")->setEnabled(!m_after.isEmpty());
    QTreeWidgetItem* item = itemOf(*m_contents, m_topic.text());
    if (!item)
        item = itemOf(*m_contents, m_topic.page);
    const QSignalBlocker quiet(m_contents);
    m_contents->setCurrentItem(item);
    if (item && item->parent())
        item->parent()->setExpanded(true);
    m_contents->scrollToItem(item);
}

void HelpWindow::followLink(const QString& link)
{
    open(Handbook::linkFrom(m_topic.page, link));
}

void HelpWindow::searchAll()
{
    const QString words = m_search->text().simplified();
    m_side->setCurrentWidget(words.isEmpty() ? static_cast<QWidget*>(m_contents) : m_hits);
    const QSignalBlocker quiet(m_hits);
    m_hits->clear();
    for (const HandbookHit& hit : m_handbook.search(words)) {
        auto* item = new QListWidgetItem(hit.title + u'\n' + hit.excerpt, m_hits);
        item->setData(kTopicRole, hit.topic.text());
    }
    if (!words.isEmpty() && m_hits->count() == 0) {
        auto* none = new QListWidgetItem(tr("No page has all of these words."), m_hits);
        none->setFlags(Qt::NoItemFlags);
    }
}

void HelpWindow::startFind()
{
    m_find->setFocus();
    m_find->selectAll();
}

void HelpWindow::findNext()
{
    m_browser->findNext(m_find->text());
}

void HelpWindow::findBefore()
{
    m_browser->findNext(m_find->text(), true);
}

void HelpWindow::leave()
{
    if (m_search->text().isEmpty() && m_find->text().isEmpty())
        close();
    m_search->clear();
    m_find->clear();
    m_browser->setFocus();
}

void HelpWindow::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QWidget::keyPressEvent(event);
}

} // namespace bothways::app
