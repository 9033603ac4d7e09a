namespace Jackwork.Motion;

/// <summary>A cam of any kind on the driver: its driven, the follower, moves as a timing chart asks, and the cam is made from that.</summary>
public abstract class FollowerDrive(int driver, int driven) : Drive(driver, driven);
