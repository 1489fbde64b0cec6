// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <functional>

namespace bothways::app {

/// A place for a page that is made when it is first seen: what nobody looks at costs nothing.
/// Tabs and stacks hold it as they would hold the page. (Docks that lie behind one another are all
/// shown, and moved out of sight: for their content this is too early.)
class LatePage final : public QWidget {
    Q_OBJECT

public:
    using Make = std::function<QWidget*()>;

    explicit LatePage(Make make, QWidget* parent = nullptr);

    /// The page; null while nobody has seen it.
    [[nodiscard]] QWidget* made() const { return m_page; }
    /// Takes the page away. Where it is on show, a new one is made at once.
    void drop();

signals:
    /// Each time before the page is seen, which may be behind what it is to show.
    void aboutToBeSeen();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void prepare();

    Make m_make;
    QWidget* m_page = nullptr;
};

} // namespace bothways::app
