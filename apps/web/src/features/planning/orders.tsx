const Orders = () => null;

export default Orders;
